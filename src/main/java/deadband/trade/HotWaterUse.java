package deadband.trade;

/** How much hot water a household uses, by the UK's standard assessment procedure SAP 2012. */
public final class HotWaterUse {
  /** Table 1c, January to December. */
  private static final double[] FACTOR = {
    1.10, 1.06, 1.02, 0.98, 0.94, 0.90, 0.90, 0.94, 0.98, 1.02, 1.06, 1.10
  };

  /** Table 1d, January to December [K]. */
  private static final double[] RISE_K = {
    41.2, 41.4, 40.1, 37.6, 36.4, 33.9, 30.4, 33.4, 33.5, 36.3, 39.4, 39.9
  };

  /** Heat capacity the procedure uses [kWh/(L·K)]: 4.190/3600. */
  private static final double CAPACITY_KWH_PER_LK = 4.190 / 3600;

  private static final ValidRange MONTH = new ValidRange("month", 1, 12, "");

  private HotWaterUse() {}

  /**
   * Mean use in a day, 25·N + 36 (SAP 2012; read).
   *
   * @param occupants number of people N, 0 or more
   * @return [L/d]
   */
  public static double daily_L(double occupants) {
    return 25 * Require.notNegative("occupants", occupants) + 36;
  }

  /** Factor of a month, 1 to 12, on the mean use (SAP 2012 Table 1c; read). */
  public static double monthFactor(int month) {
    return FACTOR[(int) MONTH.check(month) - 1];
  }

  /** Rise of the water drawn in a month, 1 to 12 [K] (SAP 2012 Table 1d; read). */
  public static double rise_K(int month) {
    return RISE_K[(int) MONTH.check(month) - 1];
  }

  /**
   * Heat drawn in a day of a month, V·f·ΔT·4.190/3600 (SAP 2012).
   *
   * @param occupants number of people, 0 or more
   * @param month 1 to 12
   * @return [kWh/d]
   */
  public static double daily_kWh(double occupants, int month) {
    return daily_L(occupants) * monthFactor(month) * rise_K(month) * CAPACITY_KWH_PER_LK;
  }
}
