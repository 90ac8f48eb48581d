package deadband.trade;

/**
 * What a battery between full and empty keeps from a surplus relay. A full battery hides nothing
 * and an empty one covers nothing.
 */
public final class BatteryShadow {
  private BatteryShadow() {}

  /**
   * Surplus the battery takes before the relay can see it: min(S, charge power).
   *
   * @param surplus_kW steady surplus [kW]
   * @param charge_kW charge power [kW], 0 or more
   * @return [kW], 0 without surplus
   */
  public static double hidden_kW(double surplus_kW, double charge_kW) {
    return Math.min(Math.max(0, surplus_kW), Require.notNegative("charge_kW", charge_kW));
  }

  /**
   * Part of the heat pump's draw the battery covers, so that the relay does not see it fall: min(P
   * − S, discharge power).
   *
   * @param draw_kW draw of the heat pump [kW]
   * @param surplus_kW steady surplus [kW]
   * @param discharge_kW discharge power [kW], 0 or more
   * @return [kW], 0 where the surplus covers the draw
   */
  public static double covered_kW(double draw_kW, double surplus_kW, double discharge_kW) {
    return hidden_kW(draw_kW - surplus_kW, discharge_kW);
  }
}
