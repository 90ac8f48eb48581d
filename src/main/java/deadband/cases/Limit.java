package deadband.cases;

import static deadband.trade.Known.COMMON_PRACTICE;
import static deadband.trade.Known.DERIVED;
import static deadband.trade.Known.READ;

import deadband.setup.Unit;
import deadband.trade.Known;
import java.util.Optional;

/** The limits of the rule book. Each name carries its unit; a limits file uses the same names. */
// Error Prone cannot see that a record of numbers and text never changes.
@SuppressWarnings("ImmutableEnumChecker")
public enum Limit {
  DISINFECTION_TEMPERATURE(
      "disinfectionTemperature_C",
      60,
      "temperature that stored hot water must reach for disinfection",
      "UK HSE, hot and cold water systems (HSG274 Part 2, 2014); WHO 2007",
      READ),
  IMPORT_SHARE_OF_DRAW(
      "importShareOfDraw",
      0.10,
      "share of the heat pump's draw that may be bought while held on surplus",
      "none",
      COMMON_PRACTICE),
  CLOUD_COST(
      "cloudCost_kWh",
      0.5,
      "energy that may be bought in one cloud to zero surplus",
      "none",
      COMMON_PRACTICE),
  THRESHOLD_PLAUSIBLE(
      "thresholdPlausible_kW",
      23,
      "most a domestic single-phase supply carries: 100 A at 230 V",
      "arithmetic",
      DERIVED);

  private final Limits.Entry entry;

  Limit(String name, double value, String what, String source, Known known) {
    this.entry = new Limits.Entry(name, what, value, Unit.of(name), source, known);
  }

  /** The limit as the rule book has it. */
  public Limits.Entry entry() {
    return entry;
  }

  /** The limit of this name. */
  public static Optional<Limit> named(String name) {
    for (Limit limit : values()) {
      if (limit.entry.name().equals(name)) {
        return Optional.of(limit);
      }
    }
    return Optional.empty();
  }
}
