package deadband.meterlog;

/** A unit in which a log gives its values. */
public enum LogUnit {
  W("W", 1000, false),
  KW("kW", 1, false),
  WH("Wh", 1000, true),
  KWH("kWh", 1, true),
  C("°C", 1, false),
  F("°F", 1, false),
  NONE("no unit", 1, false);

  private final String word;
  private final double divisor;
  private final boolean energy;

  LogUnit(String word, double divisor, boolean energy) {
    this.word = word;
    this.divisor = divisor;
    this.energy = energy;
  }

  public String word() {
    return word;
  }

  /** Whether it is a unit of energy. */
  public boolean isEnergy() {
    return energy;
  }

  boolean isDegrees() {
    return this == C || this == F;
  }

  /** A value in kW, kWh or °C. */
  double brought(double value) {
    return this == F ? (value - 32) / 1.8 : value / divisor;
  }
}
