package deadband.meterlog;

import java.util.Locale;

/** What a column of a meter log measures. */
public enum Meaning {
  GRID("grid power, import positive"),
  IMPORT("import from the grid"),
  EXPORT("export to the grid"),
  PV("PV power"),
  HEAT_PUMP("power input of the heat pump"),
  IMMERSION("power of the immersion heater"),
  HOUSE("power of the whole house"),
  SURPLUS("surplus as a controller counts it"),
  BATTERY("battery power"),
  VEHICLE("power of the vehicle charger"),
  CALL("call contact: 1 closed, 0 open"),
  TANK("tank temperature"),
  FLOW("flow temperature"),
  OUTDOOR("outdoor temperature"),
  UNKNOWN("not recognised");

  private final String says;

  Meaning(String says) {
    this.says = says;
  }

  /** Its name in options and JSON: {@code heat-pump}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public String says() {
    return says;
  }

  /** Whether it is a power or an energy. */
  public boolean isPower() {
    return !isTemperature() && this != CALL;
  }

  public boolean isTemperature() {
    return this == TANK || this == FLOW || this == OUTDOOR;
  }
}
