package deadband.trade;

/** Temperatures of stored and drawn hot water that keep legionella down. */
public final class Hygiene {
  private static final String HSE_PAGE =
      "UK HSE, hot and cold water systems page (summary of HSG274 Part 2, 2014)";

  /** Store hot water at this or above. */
  public static final Figure STORE_C =
      new Figure(
          "minimum storage temperature of hot water",
          60,
          "°C",
          HSE_PAGE + "; WHO, Legionella and the prevention of legionellosis, 2007",
          Known.READ);

  /** Lower end of the growth band. */
  public static final Figure GROWTH_FROM_C =
      new Figure("growth band from", 20, "°C", "UK HSE landlord guidance", Known.SECOND_HAND);

  /** Upper end of the growth band. */
  public static final Figure GROWTH_TO_C =
      new Figure("growth band to", 45, "°C", "UK HSE landlord guidance", Known.SECOND_HAND);

  private Hygiene() {}

  /** Returns whether water at this temperature [°C] lies in the growth band, both ends included. */
  public static boolean inGrowthBand(double temperature_C) {
    return temperature_C >= GROWTH_FROM_C.value() && temperature_C <= GROWTH_TO_C.value();
  }
}
