package deadband.trade;

/**
 * The European Union's average climate, month by month: what a year run uses where nothing better
 * is entered. Regulation (EU) 814/2013, Annex III (read).
 */
public final class AverageClimate {
  private static final double[] OUTDOOR_C = {
    2.8, 2.6, 7.4, 12.2, 16.3, 19.8, 21.0, 22.0, 17.0, 11.9, 5.6, 3.2
  };

  private static final double[] IRRADIANCE_W_PER_M2 = {
    70, 104, 149, 192, 221, 222, 232, 217, 176, 129, 80, 56
  };

  private static final ValidRange MONTH = new ValidRange("month", 1, 12, "");

  private AverageClimate() {}

  /** Mean daytime outdoor temperature of a month, 1 to 12 [°C]. */
  public static double outdoor_C(int month) {
    return OUTDOOR_C[(int) MONTH.check(month) - 1];
  }

  /** Mean global irradiance of a month, 1 to 12 [W/m²]. */
  public static double irradiance_W_per_m2(int month) {
    return IRRADIANCE_W_PER_M2[(int) MONTH.check(month) - 1];
  }
}
