package deadband.facts;

import deadband.setup.Unit;

/**
 * A quantity with its value, as it is shown.
 *
 * @param quantity what was measured or calculated, in the words of the trade
 * @param value at the resolution of its unit
 * @param unit as printed; empty for a plain number
 */
public record Measure(String quantity, double value, String unit) {

  /** A measure in one of the units of the setup file, brought to its resolution. */
  public static Measure of(String quantity, double value, Unit unit) {
    return new Measure(quantity, unit.round(value), unit.printed());
  }

  /** A measure in any other unit, brought to a tenth. */
  public static Measure of(String quantity, double value, String unit) {
    return new Measure(quantity, Math.rint(value * 10) / 10 + 0.0, unit);
  }
}
