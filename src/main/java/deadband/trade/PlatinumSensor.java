package deadband.trade;

/**
 * Platinum resistance thermometers: resistance to temperature and back, tolerance, lead resistance,
 * and the recognition of another curve.
 *
 * <p>IEC 60751 for 0 °C and above: R = R₀·(1 + A·ϑ + B·ϑ²) (coefficients second-hand; they agree
 * with every published Pt100 point to the printed digit). Below 0 °C and above 200 °C the functions
 * refuse: no tank sensor belongs there.
 */
public final class PlatinumSensor {
  /** Temperatures for which the functions hold. */
  public static final ValidRange RANGE_C =
      new ValidRange("platinum sensor temperature", 0, 200, "°C");

  private PlatinumSensor() {}

  /** Curves of platinum sensors. */
  public enum Curve {
    /** IEC 60751, α = 0.003851 (second-hand). */
    IEC_60751(3.9083e-3, -5.775e-7, Known.SECOND_HAND),
    /** The older 3916 curve of JIS, α = 0.003916: another sensor, not a tolerance (second-hand). */
    CURVE_3916(3.9739e-3, -5.870e-7, Known.SECOND_HAND);

    private final double a_per_K;
    private final double b_per_K2;
    private final Known known;

    Curve(double a, double b, Known known) {
      this.a_per_K = a;
      this.b_per_K2 = b;
      this.known = known;
    }

    /** How the coefficients are known. */
    public Known known() {
      return known;
    }

    /**
     * Resistance, R = R₀·(1 + A·ϑ + B·ϑ²).
     *
     * @param nominal_ohm resistance at 0 °C [Ω], positive: 100 or 1000
     * @param temperature_C temperature ϑ [°C], 0 to 200
     * @return resistance [Ω]
     */
    public double resistance_ohm(double nominal_ohm, double temperature_C) {
      double t = RANGE_C.check(temperature_C);
      return Require.positive("nominal_ohm", nominal_ohm) * (1 + t * (a_per_K + t * b_per_K2));
    }

    /**
     * Temperature of a resistance, the smaller root of the curve: ϑ = (−A + √(A² − 4B(1 −
     * R/R₀)))/(2B).
     *
     * @param nominal_ohm resistance at 0 °C [Ω], positive
     * @param resistance_ohm resistance [Ω]
     * @return temperature [°C], 0 to 200
     * @throws IllegalArgumentException where the resistance belongs to no such temperature
     */
    public double temperature_C(double nominal_ohm, double resistance_ohm) {
      Require.positive("nominal_ohm", nominal_ohm);
      new ValidRange("resistance", nominal_ohm, resistance_ohm(nominal_ohm, RANGE_C.most()), "Ω")
          .check(resistance_ohm);
      double root =
          Math.sqrt(a_per_K * a_per_K - 4 * b_per_K2 * (1 - resistance_ohm / nominal_ohm));
      return RANGE_C.clamp((root - a_per_K) / (2 * b_per_K2));
    }

    /** Slope dR/dt = R₀·(A + 2·B·ϑ) [Ω/K] at a temperature [°C]. */
    public double slope_ohm_per_K(double nominal_ohm, double temperature_C) {
      double t = RANGE_C.check(temperature_C);
      return Require.positive("nominal_ohm", nominal_ohm) * (a_per_K + 2 * b_per_K2 * t);
    }
  }

  /** Tolerance classes, ±(a + b·|ϑ|) K. IEC 60751 (AA, A, B second-hand; C from memory). */
  public enum ToleranceClass {
    AA(0.10, 0.0017, Known.SECOND_HAND),
    A(0.15, 0.002, Known.SECOND_HAND),
    B(0.30, 0.005, Known.SECOND_HAND),
    C(0.60, 0.01, Known.MEMORY);

    private final double fixed_K;
    private final double share;
    private final Known known;

    ToleranceClass(double fixed_K, double share, Known known) {
      this.fixed_K = fixed_K;
      this.share = share;
      this.known = known;
    }

    /** How the class is known. */
    public Known known() {
      return known;
    }

    /** Tolerance either way [K] at a temperature [°C]. */
    public double tolerance_K(double temperature_C) {
      return fixed_K + share * Math.abs(Require.finite("temperature_C", temperature_C));
    }
  }

  /**
   * What the resistance of the leads adds to the reading of a two-wire sensor: R_lead/(dR/dt).
   *
   * @param nominal_ohm resistance at 0 °C [Ω], positive
   * @param lead_ohm resistance of both leads together [Ω], 0 or more
   * @param temperature_C temperature [°C], 0 to 200
   * @return error of the reading [K], always upward
   */
  public static double leadError_K(double nominal_ohm, double lead_ohm, double temperature_C) {
    return Require.notNegative("lead_ohm", lead_ohm)
        / Curve.IEC_60751.slope_ohm_per_K(nominal_ohm, temperature_C);
  }

  /** What a measured resistance and a displayed temperature say of the sensor. */
  public enum Reading {
    /** Resistance and display agree on the expected sensor. */
    AGREES,
    /** They agree on the 3916 curve: another sensor. */
    OTHER_CURVE,
    /** They agree on a sensor of ten times, or a tenth of, the expected resistance. */
    OTHER_NOMINAL,
    /** They agree on no platinum sensor known here. */
    FITS_NOTHING
  }

  /**
   * Holds a measured resistance against the temperature displayed at the same time.
   *
   * <p>The tolerance is that of the class at the displayed temperature; leads only ever add to a
   * resistance, so their effect is allowed upward alone. The curves are tried in the order of
   * {@link Reading}.
   *
   * @param nominal_ohm resistance at 0 °C of the expected sensor [Ω]: 100 or 1000
   * @param measured_ohm measured resistance, leads included [Ω], positive
   * @param displayed_C temperature displayed [°C], 0 to 200
   * @param tolerance class of the sensor
   * @param lead_ohm resistance of both leads together [Ω], 0 or more
   */
  public static Reading reading(
      double nominal_ohm,
      double measured_ohm,
      double displayed_C,
      ToleranceClass tolerance,
      double lead_ohm) {
    return reading(
        nominal_ohm, measured_ohm, displayed_C, tolerance.tolerance_K(displayed_C), lead_ohm);
  }

  /**
   * The same for a sensor whose tolerance its data sheet states.
   *
   * @param tolerance_K tolerance either way [K], 0 or more
   */
  public static Reading reading(
      double nominal_ohm,
      double measured_ohm,
      double displayed_C,
      double tolerance_K,
      double lead_ohm) {
    Require.positive("measured_ohm", measured_ohm);
    Span allowed =
        new Span(
            Require.notNegative("tolerance_K", tolerance_K),
            tolerance_K + leadError_K(nominal_ohm, lead_ohm, displayed_C));
    if (fits(Curve.IEC_60751, nominal_ohm, measured_ohm, displayed_C, allowed)) {
      return Reading.AGREES;
    }
    if (fits(Curve.CURVE_3916, nominal_ohm, measured_ohm, displayed_C, allowed)) {
      return Reading.OTHER_CURVE;
    }
    boolean otherNominal =
        fits(Curve.IEC_60751, nominal_ohm * 10, measured_ohm, displayed_C, allowed)
            || fits(Curve.IEC_60751, nominal_ohm / 10, measured_ohm, displayed_C, allowed);
    return otherNominal ? Reading.OTHER_NOMINAL : Reading.FITS_NOTHING;
  }

  /** How far a measured resistance may lie below and above the curve [K]. */
  private record Span(double below_K, double above_K) {}

  private static boolean fits(
      Curve curve, double nominal_ohm, double measured_ohm, double displayed_C, Span allowed) {
    double above_K =
        (measured_ohm - curve.resistance_ohm(nominal_ohm, displayed_C))
            / curve.slope_ohm_per_K(nominal_ohm, displayed_C);
    return above_K <= allowed.above_K() && -above_K <= allowed.below_K();
  }
}
