package deadband.trade;

/**
 * How fast heat kills legionella suspended in water, told cautiously.
 *
 * <p>The decimal reduction time D is the time that leaves a tenth alive. Sources disagree by a
 * factor of ten, so at each temperature the longest that any source gives is used: the 1989
 * laboratory paper, the handbook rule D₆₀ = 2 min with z = 5.29 K, the table of an open model
 * library, and the eight decades of Stout et al. 1986. Tables are read on a straight line between
 * points, which for a curve of this shape lies on the long side. Nothing is credited below 55 °C.
 *
 * <p>Pipes and biofilm are not covered, and one public health body does not recommend heat alone as
 * a cure. Whether a cycle passes is judged by the national cycle ({@link DisinfectionCycle}), never
 * by the number from here. Local codes and licensed practice outrank it.
 */
public final class DecimalReduction {
  /** Below this nothing is credited [°C]. */
  public static final double LEAST_CREDITED_C = 55;

  /** Above this the reduction is said to be "more than 8 log" and nothing else. */
  public static final double MOST_CREDITED_LOG = 8;

  /** Temperatures for which a decimal reduction time is stated. */
  public static final ValidRange RANGE_C =
      new ValidRange("disinfection temperature", LEAST_CREDITED_C, 100, "°C");

  /** Current Microbiology 1989, chlorine-free water (read): °C and minutes. */
  private static final double[] PAPER_C = {45, 50, 55, 60, 66};

  private static final double[] PAPER_MIN = {2500, 380, 13.93, 0.74, 0.45};

  /** BESMod model library (open, read), °C and hours; read off a curve, hence the odd digits. */
  private static final double[] LIBRARY_C = {
    45.5505451608561,
    48.78942881500426,
    51.23771705478529,
    53.542872526585,
    55.85049580472921,
    58.450217615650374,
    62.20891102436398,
    65.03006236819671,
    68.72055458338941,
    73.06411809575089,
    75.88841028402207,
    78.13366536545968
  };

  private static final double[] LIBRARY_H = {
    62.916073325099134,
    7.736506444512433,
    1.7687971042538275,
    0.47986000155581393,
    0.16470935490617822,
    0.07001663558934895,
    0.028517297027731203,
    0.017814514615367875,
    0.010893105323934898,
    0.007255730019232521,
    0.006114735966220416,
    0.005494625286920662
  };

  /** Stout et al. 1986 (second-hand): eight decades in 25, 10 and 5 min at 60, 70 and 80 °C. */
  private static final double[] STOUT_C = {60, 70, 80};

  private static final double[] STOUT_MIN = {25 / 8.0, 10 / 8.0, 5 / 8.0};

  private static final ValidRange PAPER_RANGE_C =
      new ValidRange(
          "temperature in the 1989 paper", PAPER_C[0], PAPER_C[PAPER_C.length - 1], "°C");

  private static final ValidRange LIBRARY_RANGE_C =
      new ValidRange(
          "temperature in the model library", LIBRARY_C[0], LIBRARY_C[LIBRARY_C.length - 1], "°C");

  private static final double HANDBOOK_D60_MIN = 2;
  private static final double HANDBOOK_Z_K = 5.29;
  private static final double MINUTES_PER_HOUR = 60;

  private DecimalReduction() {}

  /**
   * Decimal reduction time, the longest of the sources.
   *
   * @param temperature_C water temperature [°C], 55 to 100; above 80 °C the last value of Stout et
   *     al. stands, which is on the long side
   * @return D [min]
   * @throws IllegalArgumentException outside the range: below 55 °C nothing is credited
   */
  public static double cautious_min(double temperature_C) {
    RANGE_C.check(temperature_C);
    double longest_min =
        Math.max(
            byStout_min(temperature_C),
            Math.max(byHandbook_min(temperature_C), byLibrary_min(temperature_C)));
    return temperature_C > PAPER_C[PAPER_C.length - 1]
        ? longest_min
        : Math.max(longest_min, byPaper_min(temperature_C));
  }

  /**
   * Decimal reduction time by the 1989 paper: 2500, 380, 13.93, 0.74 and 0.45 min at 45, 50, 55, 60
   * and 66 °C, straight lines between.
   *
   * @param temperature_C [°C], 45 to 66
   * @return D [min]
   */
  public static double byPaper_min(double temperature_C) {
    return onTable(PAPER_C, PAPER_MIN, PAPER_RANGE_C.check(temperature_C));
  }

  /**
   * Decimal reduction time by the handbook rule, D = 2·10^((60 − T)/5.29) min (second-hand).
   *
   * @param temperature_C [°C]
   * @return D [min]
   */
  public static double byHandbook_min(double temperature_C) {
    return HANDBOOK_D60_MIN * Math.pow(10, (60 - temperature_C) / HANDBOOK_Z_K);
  }

  /**
   * Decimal reduction time by the open model library's table, straight lines between; above its
   * last point (78.1 °C) the last value.
   *
   * @param temperature_C [°C], 45.6 or more
   * @return D [min]
   */
  public static double byLibrary_min(double temperature_C) {
    double last_C = LIBRARY_C[LIBRARY_C.length - 1];
    double hours =
        temperature_C >= last_C
            ? LIBRARY_H[LIBRARY_H.length - 1]
            : onTable(LIBRARY_C, LIBRARY_H, LIBRARY_RANGE_C.check(temperature_C));
    return hours * MINUTES_PER_HOUR;
  }

  /**
   * Decimal reduction time by Stout et al. 1986, an eighth of the time for eight decades, straight
   * lines between; above the last point (80 °C) the last value.
   *
   * @param temperature_C [°C]
   * @return D [min]; 0 below 60 °C, where it says nothing
   */
  public static double byStout_min(double temperature_C) {
    return temperature_C < STOUT_C[0]
        ? 0
        : onTable(STOUT_C, STOUT_MIN, Math.min(temperature_C, STOUT_C[STOUT_C.length - 1]));
  }

  private static double onTable(double[] x, double[] y, double at) {
    int above = 1;
    while (x[above] < at) {
      above++;
    }
    double share = (at - x[above - 1]) / (x[above] - x[above - 1]);
    return y[above - 1] + share * (y[above] - y[above - 1]);
  }

  /**
   * Log reduction in one span of constant temperature, t/D(T).
   *
   * @param temperature_C water temperature [°C], at most 100
   * @param time_min time [min], 0 or more
   * @return decades, not capped; 0 below 55 °C
   */
  public static double credited_log(double temperature_C, double time_min) {
    Require.notNegative("time_min", time_min);
    return temperature_C < LEAST_CREDITED_C ? 0 : time_min / cautious_min(temperature_C);
  }

  /**
   * Log reduction of a hold at one temperature, capped at 8.
   *
   * @param temperature_C water temperature [°C], at most 100
   * @param hold_min time [min], 0 or more
   */
  public static double hold_log(double temperature_C, double hold_min) {
    return Math.min(MOST_CREDITED_LOG, credited_log(temperature_C, hold_min));
  }
}
