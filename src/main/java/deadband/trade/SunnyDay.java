package deadband.trade;

/** What a sunny day leaves over, as an installer calculates it on the back of an envelope. */
public final class SunnyDay {
  /** Hours at rated power that a sunny day is worth. */
  public static final Figure FULL_SUN_H =
      new Figure("sunny day in hours at rated power", 5, "h", "none", Known.COMMON_PRACTICE);

  /** Hours of a day in which the sun is up and the house takes its share first. */
  public static final Figure DAYLIGHT_H =
      new Figure("sunny day from dawn to dusk", 12, "h", "none", Known.COMMON_PRACTICE);

  private SunnyDay() {}

  /**
   * Energy a sunny day leaves over, Q = max(0, P_peak·5 h − P_house·12 h).
   *
   * @param peak_kW rated power of the modules [kW], 0 or more
   * @param house_kW power the house always draws [kW], 0 or more
   * @return [kWh/d]
   */
  public static double surplus_kWh(double peak_kW, double house_kW) {
    double yield_kWh = Require.notNegative("peak_kW", peak_kW) * FULL_SUN_H.value();
    double house_kWh = Require.notNegative("house_kW", house_kW) * DAYLIGHT_H.value();
    return Math.max(0, yield_kWh - house_kWh);
  }
}
