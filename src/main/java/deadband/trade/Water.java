package deadband.trade;

/**
 * Density and specific heat of liquid water from 0 to 100 °C, at the pressure of a store.
 *
 * <p>Two polynomials in x = t/100, fitted for this project to IAPWS-IF97 (region 1) at 0.3 MPa in
 * steps of 0.1 K by a near-minimax least-squares fit of the relative error. The reference values
 * came from running the library {@code com.hummeling:if97:1.0.5}. Greatest error over the whole
 * range 0.0006 % for the density and 0.0031 % for the specific heat. Between 0.15 and 0.6 MPa
 * pressure moves either by less than 0.04 %.
 *
 * <p>Outside 0 to 100 °C every function refuses. None allocates.
 */
public final class Water {
  /** Where the fits hold. */
  public static final ValidRange RANGE_C = new ValidRange("water temperature", 0, 100, "°C");

  private static final double KJ_PER_KWH = 3600;
  private static final double L_PER_M3 = 1000;

  private Water() {}

  /**
   * Density of water.
   *
   * <p>ρ = 999.951 + 6.1868·x − 83.8492·x² + 66.4197·x³ − 41.9344·x⁴ + 11.6788·x⁵, x = t/100.
   *
   * @param temperature_C temperature t [°C], 0 to 100
   * @return density [kg/m³]
   * @throws IllegalArgumentException outside the range
   */
  public static double density_kg_per_m3(double temperature_C) {
    double x = RANGE_C.check(temperature_C) / 100;
    return 999.951 + x * (6.1868 + x * (-83.8492 + x * (66.4197 + x * (-41.9344 + x * 11.6788))));
  }

  /**
   * Specific heat of water at constant pressure.
   *
   * <p>c = 4.21832 − 0.339944·x + 1.28793·x² − 2.89846·x³ + 3.90173·x⁴ − 2.70915·x⁵ + 0.755866·x⁶,
   * x = t/100.
   *
   * @param temperature_C temperature t [°C], 0 to 100
   * @return specific heat [kJ/(kg·K)]
   * @throws IllegalArgumentException outside the range
   */
  public static double specificHeat_kJ_per_kgK(double temperature_C) {
    double x = RANGE_C.check(temperature_C) / 100;
    return 4.21832
        + x
            * (-0.339944
                + x * (1.28793 + x * (-2.89846 + x * (3.90173 + x * (-2.70915 + x * 0.755866)))));
  }

  /**
   * Heat that one litre takes up for one kelvin, ρ·c.
   *
   * @param temperature_C temperature of the water [°C], 0 to 100
   * @return volumetric heat capacity [kWh/(L·K)], about 0.00116
   * @throws IllegalArgumentException outside the range
   */
  public static double heatCapacity_kWh_per_LK(double temperature_C) {
    return density_kg_per_m3(temperature_C)
        * specificHeat_kJ_per_kgK(temperature_C)
        / (L_PER_M3 * KJ_PER_KWH);
  }
}
