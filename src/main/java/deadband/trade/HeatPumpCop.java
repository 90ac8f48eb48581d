package deadband.trade;

/**
 * Coefficient of performance of a heat pump: published fits against the lift, thermodynamic bounds,
 * and what follows for input and output while a tank warms.
 *
 * <p>Lift is the temperature of the water leaving the condenser less that of the source [K]. The
 * functions the minute-by-minute run calls ({@link Fit#cop}, {@link Fit#copClamped}, {@link
 * #input_kW}, {@link #output_kW}) allocate nothing.
 */
public final class HeatPumpCop {
  /** Field over test bench (Ruhnau et al. 2019, the authors' open script; read there). */
  public static final double FIELD_FACTOR = 0.85;

  /** Ground a metre down. */
  public static final Figure GROUND_C =
      new Figure("ground a metre down", 10, "°C", "none", Known.COMMON_PRACTICE);

  /** Outdoor air on a warm day. */
  public static final Figure WARM_AIR_C =
      new Figure("outdoor air on a warm day", 20, "°C", "none", Known.COMMON_PRACTICE);

  /** What the best of the machines on the market reach of the Carnot bound. */
  public static final Figure BEST_SHARE =
      new Figure("maximum share of the Carnot limit", 0.6, "", "none", Known.MEMORY);

  /** Below this lift no heat pump for hot water works, and the bound means little [K]. */
  private static final double LEAST_LIFT_K = 15;

  private static final double HUNDREDTHS = 100;

  /** What brine lies below the ground, and water at the evaporator below the ground water. */
  public static final Figure BELOW_SOURCE_K =
      new Figure(
          "brine below the ground, evaporator below ground water",
          5,
          "K",
          "Ruhnau et al. 2019, the authors' open script",
          Known.READ);

  private static final double ZERO_CELSIUS_K = 273.15;

  private HeatPumpCop() {}

  /**
   * Published fits COP = a + b·ΔT + c·ΔT².
   *
   * <p>Staffell et al. 2012, Energy Environ. Sci. 5, 9291: coefficients and ranges read in open
   * code that names the paper (second-hand). Ruhnau et al. 2019, Sci. Data 6:189: coefficients read
   * in the authors' own open data (second-hand for the paper). Their script clips the lift at 15 K
   * from below and nowhere above; the curves fall up to 85 K, and are held to 80 K here.
   */
  // Error Prone cannot see that a record of numbers and text never changes.
  @SuppressWarnings("ImmutableEnumChecker")
  public enum Fit {
    STAFFELL_AIR(6.81, -0.121, 0.000630, 15, 60, "Staffell et al. 2012"),
    STAFFELL_GROUND(8.77, -0.150, 0.000734, 20, 60, "Staffell et al. 2012"),
    RUHNAU_AIR(6.0801, -0.0941, 0.0005, 15, 80, "Ruhnau et al. 2019"),
    RUHNAU_GROUND(10.288, -0.2084, 0.0012, 15, 80, "Ruhnau et al. 2019"),
    RUHNAU_WATER(9.9696, -0.2049, 0.0012, 15, 80, "Ruhnau et al. 2019");

    private final double constant;
    private final double slope_per_K;
    private final double bend_per_K2;
    private final ValidRange lift_K;
    private final String source;

    Fit(double constant, double slope, double bend, double least_K, double most_K, String source) {
      this.constant = constant;
      this.slope_per_K = slope;
      this.bend_per_K2 = bend;
      this.lift_K = new ValidRange("lift", least_K, most_K, "K");
      this.source = source;
    }

    /** Lifts for which the fit holds. */
    public ValidRange lift_K() {
      return lift_K;
    }

    /** The paper the coefficients come from. */
    public String source() {
      return source;
    }

    /**
     * COP at a lift.
     *
     * @param lift_K flow temperature less source temperature [K], within {@link #lift_K()}
     * @throws IllegalArgumentException with lift and range outside it
     */
    public double cop(double lift_K) {
      return evaluate(this.lift_K.check(lift_K));
    }

    /**
     * COP at a lift that is first brought into the fit's range. For the day run, which may pass
     * through any lift: below the range the COP is understated, above it overstated.
     *
     * @param lift_K flow temperature less source temperature [K]
     */
    public double copClamped(double lift_K) {
      return evaluate(this.lift_K.clamp(lift_K));
    }

    /**
     * What the compressor draws at a tank temperature, at constant heat output: {@link
     * HeatPumpCop#input_kW} with this fit, lifts brought into its range.
     *
     * @param hotWaterInput_kW what it draws at {@code stop_C} [kW], positive
     * @param minimumInput_kW the least it draws [kW], 0 or more
     * @param source_C temperature of the source [°C]
     * @param flowAboveTank_K flow above tank [K]
     * @param stop_C tank temperature at which it draws the most [°C]
     * @param tank_C present tank temperature [°C]
     * @return input [kW]
     */
    public double inputAt_kW(
        double hotWaterInput_kW,
        double minimumInput_kW,
        double source_C,
        double flowAboveTank_K,
        double stop_C,
        double tank_C) {
      double above_K = flowAboveTank_K - source_C;
      return input_kW(
          hotWaterInput_kW,
          minimumInput_kW,
          copClamped(stop_C + above_K),
          copClamped(tank_C + above_K));
    }

    private double evaluate(double lift_K) {
      return constant + lift_K * (slope_per_K + lift_K * bend_per_K2);
    }
  }

  /**
   * Carnot bound on the COP, T_sink/(T_sink − T_source) in kelvin.
   *
   * @param sink_C temperature heat is given off at [°C], above {@code source_C}
   * @param source_C temperature heat is taken up at [°C], above −273.15
   */
  public static double carnot(double sink_C, double source_C) {
    Require.above("source_C", source_C, "absolute zero", -ZERO_CELSIUS_K);
    Require.above("sink_C", sink_C, "source_C", source_C);
    return (sink_C + ZERO_CELSIUS_K) / (sink_C - source_C);
  }

  /**
   * Highest COP to be expected of any machine, {@link #BEST_SHARE} of the Carnot bound, to 0.01;
   * lifts below 15 K count as 15 K.
   *
   * @param flow_C temperature of the water leaving the condenser [°C]
   * @param source_C temperature of the source [°C]
   */
  public static double best(double flow_C, double source_C) {
    double sink_C = Math.max(flow_C, source_C + LEAST_LIFT_K);
    return Math.rint(HUNDREDTHS * BEST_SHARE.value() * carnot(sink_C, source_C)) / HUNDREDTHS;
  }

  /**
   * Temperature that the fits of ground and water source are made for [°C]: brine, or water behind
   * its heat exchanger, 5 K below ground or ground water.
   */
  public static double brine_C() {
    return GROUND_C.value() - BELOW_SOURCE_K.value();
  }

  /**
   * What a machine does in the field, as a share of a fit: its own plate over the fit at the same
   * temperatures, × 0.85. A plate that is better than the fit is not credited. Field means for
   * heating and hot water together are 3.7 for ground, 3.4 for water and 2.8 for air (Fraunhofer
   * ISE field tests, abstract, read); hot water alone lies below them.
   *
   * @param plateCop heat over power input as the plate states them, positive
   * @param fitCop COP of the fit at the temperatures the plate speaks of, positive
   * @return share, at most 0.85
   */
  public static double fieldFactor(double plateCop, double fitCop) {
    return inTheField(Math.min(1, plateCop / Require.positive("fitCop", fitCop)));
  }

  /** COP to expect in the field from one measured on a test bench: × 0.85. */
  public static double inTheField(double cop) {
    return FIELD_FACTOR * Require.positive("cop", cop);
  }

  /**
   * What the compressor draws on the way to the stop temperature, at constant heat output.
   *
   * <p>P(T) = max(P_least, P_most·COP(stop)/COP(T)). Equal most and least mean constant draw.
   *
   * @param hotWaterInput_kW the most it draws, at the top of the programme [kW], positive
   * @param minimumInput_kW the least it draws [kW], 0 or more
   * @param copAtStop COP at the stop temperature, positive
   * @param copNow COP at the present temperature, positive
   * @return input [kW], never above {@code hotWaterInput_kW} while the tank is colder than at the
   *     stop, never below {@code minimumInput_kW}
   */
  public static double input_kW(
      double hotWaterInput_kW, double minimumInput_kW, double copAtStop, double copNow) {
    Require.positive("hotWaterInput_kW", hotWaterInput_kW);
    Require.notNegative("minimumInput_kW", minimumInput_kW);
    double share = Require.positive("copAtStop", copAtStop) / Require.positive("copNow", copNow);
    return Math.max(minimumInput_kW, hotWaterInput_kW * share);
  }

  /**
   * Heat given off by the compressor.
   *
   * @param input_kW electrical input [kW], 0 or more
   * @param cop COP, positive
   * @return Q = P·COP [kW]
   */
  public static double output_kW(double input_kW, double cop) {
    return Require.notNegative("input_kW", input_kW) * Require.positive("cop", cop);
  }
}
