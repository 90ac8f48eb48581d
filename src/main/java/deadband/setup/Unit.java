package deadband.setup;

import java.util.List;
import java.util.Optional;

/**
 * The units a name may end in, each with what can physically be and the step to which a value is
 * brought before it is compared.
 */
public enum Unit {
  KILOWATT("kW", "kW", 0, 100, 3),
  KILOWATT_HOUR("kWh", "kWh", 0, 1000, 3),
  KILOWATT_HOUR_A_DAY("kWh_per_day", "kWh/day", 0, 200, 3),
  CELSIUS("C", "°C", -50, 120, 2),
  KELVIN("K", "K", 0, 100, 2),
  MINUTE("min", "min", 0, 1440, 2),
  DAY("days", "days", 0, 3650, 3),
  MILLIMETRE("mm", "mm", 0, 20_000, 1),
  SQUARE_MILLIMETRE("mm2", "mm²", 0.1, 1000, 3),
  METRE("m", "m", 0, 1000, 3),
  SQUARE_METRE("m2", "m²", 0, 100, 3),
  LITRE("L", "L", 1, 100_000, 3),
  AMPERE("A", "A", 0, 4000, 3),
  VOLT("V", "V", 50, 500, 3),
  OHM("ohm", "Ω", 0, 100_000, 3),
  DEGREE("deg", "°", -360, 360, 4),
  NONE("", "", -1e9, 1e9, 6);

  private static final List<Unit> ALL = List.of(values());

  private final String suffix;
  private final String ending;
  private final String printed;
  private final double least;
  private final double most;
  private final double steps;

  Unit(String suffix, String printed, double least, double most, int decimals) {
    this.suffix = suffix;
    this.ending = "_" + suffix;
    this.printed = printed;
    this.least = least;
    this.most = most;
    this.steps = Math.pow(10, decimals);
  }

  /** The unit a component's name ends in; {@link #NONE} where it carries none. */
  public static Unit of(String name) {
    for (Unit unit : ALL) {
      if (!unit.suffix.isEmpty() && name.endsWith(unit.ending)) {
        return unit;
      }
    }
    return NONE;
  }

  /** The unit printed this way, for figures that carry their unit as text. */
  public static Optional<Unit> printed(String text) {
    for (Unit unit : ALL) {
      if (unit.printed.equals(text)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  /** The ending of a name that carries this unit, without its underscore. */
  public String suffix() {
    return suffix;
  }

  public String printed() {
    return printed;
  }

  public double least() {
    return least;
  }

  public double most() {
    return most;
  }

  /** The value brought to this unit's resolution, so that equal decimals are equal. */
  public double round(double value) {
    double rounded = Math.rint(value * steps) / steps;
    return rounded == 0 ? 0 : rounded;
  }
}
