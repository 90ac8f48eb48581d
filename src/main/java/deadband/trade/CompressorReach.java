package deadband.trade;

/** How hot a compressor can make a store through its coil, and what is left of it near the top. */
public final class CompressorReach {
  /** Coil area of a heat-pump cylinder, least [m²]. */
  public static final Figure COIL_AREA_M2 =
      new Figure("coil area of a heat-pump cylinder", 1.5, "m²", "trade", Known.SECOND_HAND);

  /** Coil area for each kW of output, least: 3 m² serve 12 kW. */
  public static final Figure COIL_AREA_M2_PER_KW =
      new Figure("coil area for each kW of output", 0.25, "m²/kW", "none", Known.MEMORY);

  private CompressorReach() {}

  /**
   * Highest temperature the tank can reach: maximum flow less what the flow must lie above the
   * tank.
   *
   * @param maximumFlow_C highest flow temperature [°C]
   * @param flowAboveTank_K flow above tank [K], 0 or more
   * @return [°C]
   */
  public static double highestTank_C(double maximumFlow_C, double flowAboveTank_K) {
    return Require.finite("maximumFlow_C", maximumFlow_C)
        - Require.notNegative("flowAboveTank_K", flowAboveTank_K);
  }

  /**
   * Share of the full output that the coil still passes on as the flow nears its limit. A model of
   * the day run, not a published curve: the flow a full output would need is tank + approach; once
   * that passes the limit, the limit stays and what is passed on falls in proportion to the
   * difference that is left, (maximum flow − tank)/approach.
   *
   * @param tank_C water around the coil [°C]
   * @param maximumFlow_C highest flow temperature [°C]
   * @param flowAboveTank_K flow above tank at full output [K], positive
   * @return share, 1 well below the limit, 0 where the tank is as hot as the flow can be
   */
  public static double outputShare(double tank_C, double maximumFlow_C, double flowAboveTank_K) {
    double left_K = maximumFlow_C - tank_C;
    double share = left_K / Require.positive("flowAboveTank_K", flowAboveTank_K);
    return Math.min(1, Math.max(0, share));
  }

  /**
   * Coil area per kW of heat pump output.
   *
   * @param area_m2 coil area [m²], 0 or more
   * @param output_kW heat output [kW], positive
   * @return [m²/kW]
   */
  public static double coilArea_m2_per_kW(double area_m2, double output_kW) {
    return Require.notNegative("area_m2", area_m2) / Require.positive("output_kW", output_kW);
  }
}
