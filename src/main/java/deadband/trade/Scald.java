package deadband.trade;

import java.util.Locale;
import java.util.Optional;

/**
 * How long hot water takes to burn skin, and what an outlet may give.
 *
 * <p>Two sources, of which the shorter time counts: the US CPSC tap-water table (second-hand) and a
 * regression on the burn data of 1947 (PLOS ONE 0254790, Fig. 2; the base of its logarithm is
 * inferred). Children and old people burn sooner.
 */
public final class Scald {
  /** Temperatures for which a time is stated; the lower end is from memory. */
  public static final ValidRange RANGE_C = new ValidRange("water on skin", 44, 100, "°C");

  /** The regression is used up to here; above, its value here still counts. */
  private static final double REGRESSION_TO_C = 57;

  private static final double[] TABLE_C = {48.9, 54.4, 60, 65.6};
  private static final double[] TABLE_S = {300, 30, 6, 2};

  private Scald() {}

  /**
   * Time to a serious burn: the shorter of {@link #byTable_s} and {@link #byRegression_s}, each
   * where it says anything. Never rises with temperature.
   *
   * @param water_C water temperature [°C], 44 to 100; above 65.6 °C it is the most that it can be,
   *     see {@link #isAtMost}
   * @return time [s]
   * @throws IllegalArgumentException outside the range
   */
  public static double timeToBurn_s(double water_C) {
    double regression_s = byRegression_s(Math.min(RANGE_C.check(water_C), REGRESSION_TO_C));
    return water_C < TABLE_C[0] ? regression_s : Math.min(regression_s, byTable_s(water_C));
  }

  /** Whether the time stated is the most it can be: beyond the end of the table it only falls. */
  public static boolean isAtMost(double water_C) {
    return water_C > TABLE_C[TABLE_C.length - 1];
  }

  /**
   * Time to a serious burn by the table: 48.9 °C 5 min, 54.4 °C 30 s, 60 °C 6 s, 65.6 °C 2 s; a
   * straight line in the logarithm of time between, 2 s above.
   *
   * @param water_C water temperature [°C], 48.9 to 100
   * @return time [s]
   */
  public static double byTable_s(double water_C) {
    new ValidRange("water on skin in the table", TABLE_C[0], RANGE_C.most(), "°C").check(water_C);
    if (water_C >= TABLE_C[TABLE_C.length - 1]) {
      return TABLE_S[TABLE_S.length - 1];
    }
    int above = 1;
    while (TABLE_C[above] < water_C) {
      above++;
    }
    double share = (water_C - TABLE_C[above - 1]) / (TABLE_C[above] - TABLE_C[above - 1]);
    return TABLE_S[above - 1] * Math.pow(TABLE_S[above] / TABLE_S[above - 1], share);
  }

  /**
   * Time to a serious burn by the regression, t = exp(116.4 − 28.3·ln T).
   *
   * @param water_C water temperature T [°C], 44 to 57
   * @return time [s]
   */
  public static double byRegression_s(double water_C) {
    new ValidRange("water on skin in the regression", RANGE_C.least(), REGRESSION_TO_C, "°C")
        .check(water_C);
    return Math.exp(116.4 - 28.3 * Math.log(water_C));
  }

  /** Outlets and the most that should leave a thermostatic mixing valve there. */
  public enum Outlet {
    BATH(44),
    SHOWER(41),
    BASIN(41),
    BIDET(38);

    private final double most_C;

    Outlet(double most_C) {
      this.most_C = most_C;
    }

    /** Highest mixed temperature [°C] that the UK TMV2 and TMV3 schemes recommend (read). */
    public double most_C() {
      return most_C;
    }

    /** Outlet by the word a setup uses, empty for one that has no stated maximum. */
    public static Optional<Outlet> named(String word) {
      for (Outlet outlet : values()) {
        if (outlet.name().toLowerCase(Locale.ROOT).equals(word)) {
          return Optional.of(outlet);
        }
      }
      return Optional.empty();
    }
  }

  /** Bath in a new dwelling, England, Wales and Scotland. */
  public static final Figure NEW_DWELLING_BATH_C =
      new Figure(
          "maximum at a bath in a new dwelling",
          48,
          "°C",
          "Approved Document G; Scottish handbook",
          Known.SECOND_HAND);

  /** Where people wash, Australia; 45 °C in care, schools and the like. */
  public static final Figure AUSTRALIA_C =
      new Figure(
          "maximum at outlets where people wash, Australia",
          50,
          "°C",
          "AS/NZS 3500.4",
          Known.SECOND_HAND);

  /** Where people wash, New Zealand, since November 2024; 45 °C or less in care and schools. */
  public static final Figure NEW_ZEALAND_C =
      new Figure(
          "maximum at outlets where people wash, New Zealand",
          50,
          "°C",
          "Building Code G12/AS1 6.14.1",
          Known.SECOND_HAND);

  /** Where people wash in care, schools and the like, Australia and New Zealand. */
  public static final Figure CARE_AU_NZ_C =
      new Figure(
          "outlets where people wash in care and schools at most, Australia and New Zealand",
          45,
          "°C",
          "AS/NZS 3500.4; Building Code G12/AS1 6.14.1",
          Known.SECOND_HAND);

  /** Where people wash, France; 60 °C in other rooms. */
  public static final Figure FRANCE_C =
      new Figure(
          "maximum at outlets where people wash, France",
          50,
          "°C",
          "Order of 30 November 2005",
          Known.SECOND_HAND);

  /** Whole-body immersion of vulnerable people. */
  public static final Figure VULNERABLE_C =
      new Figure(
          "maximum for whole-body immersion of vulnerable people", 44, "°C", "UK HSE", Known.READ);
}
