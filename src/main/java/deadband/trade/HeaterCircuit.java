package deadband.trade;

/**
 * Arithmetic of an immersion heater's circuit: power and current against voltage, volt drop, and
 * breaker against cable.
 *
 * <p>It informs. A licensed electrician and the local rules decide; isolate, lock off and prove
 * dead before opening any cover.
 */
public final class HeaterCircuit {
  private static final double W_PER_KW = 1000;
  private static final double MV_PER_V = 1000;

  /** Volt drop allowed between the origin and the load, share of the nominal voltage. */
  public static final Figure VOLT_DROP_SHARE =
      new Figure("maximum volt drop", 0.05, "", "BS 7671 Appendix 4", Known.SECOND_HAND);

  /** Declared voltage in Great Britain. */
  public static final Figure DECLARED_VOLTAGE_V =
      new Figure("declared voltage, GB", 230, "V", "SI 1994/3021", Known.READ);

  /** Highest declared voltage as a share of nominal. */
  public static final Figure VOLTAGE_UP_SHARE =
      new Figure("declared voltage, GB, upward", 0.10, "", "SI 1994/3021", Known.READ);

  /** A store larger than this has its own circuit: a recommendation, not a clause. */
  public static final Figure OWN_CIRCUIT_ABOVE_L =
      new Figure(
          "store with a circuit of its own above",
          15,
          "L",
          "Electrical Safety Council note",
          Known.SECOND_HAND);

  /** How far the power of a heater may lie above its rating. */
  public static final Figure POWER_TOLERANCE =
      new Figure("power of a heater above its rating", 0.05, "", "IEC 60335-1", Known.MEMORY);

  private HeaterCircuit() {}

  /**
   * The nominal voltage of a supply: 230 V where a voltage within a tenth of it is entered, which
   * is taken for a measured one (IEC 60038, from memory; in Great Britain SI 1994/3021, read); else
   * the voltage entered.
   *
   * @param voltage_V voltage entered for the site [V], positive
   * @return [V]
   */
  public static double nominal_V(double voltage_V) {
    double usual_V = DECLARED_VOLTAGE_V.value();
    double share = VOLTAGE_UP_SHARE.value();
    boolean usual = Math.abs(Require.positive("voltage_V", voltage_V) - usual_V) <= share * usual_V;
    return usual ? usual_V : voltage_V;
  }

  /**
   * Power of a resistance heater at another voltage, P = P_rated·(U/U_rated)².
   *
   * @param rated_kW rated power [kW], 0 or more
   * @param ratedAt_V voltage it is rated at [V], positive
   * @param voltage_V voltage at the heater [V], 0 or more
   * @return power [kW]
   */
  public static double power_kW(double rated_kW, double ratedAt_V, double voltage_V) {
    double ratio =
        Require.notNegative("voltage_V", voltage_V) / Require.positive("ratedAt_V", ratedAt_V);
    return Require.notNegative("rated_kW", rated_kW) * ratio * ratio;
  }

  /**
   * Current of a resistance heater, I = P_rated·U/U_rated².
   *
   * @param rated_kW rated power [kW], 0 or more
   * @param ratedAt_V voltage it is rated at [V], positive
   * @param voltage_V voltage at the heater [V], positive
   * @return current [A]
   */
  public static double current_A(double rated_kW, double ratedAt_V, double voltage_V) {
    return power_kW(rated_kW, ratedAt_V, Require.positive("voltage_V", voltage_V))
        * W_PER_KW
        / voltage_V;
  }

  /**
   * Voltage between two phases of a three-phase supply, √3·U.
   *
   * @param voltage_V voltage between phase and neutral U [V], 0 or more
   * @return [V]
   */
  public static double betweenPhases_V(double voltage_V) {
    return Math.sqrt(3) * Require.notNegative("voltage_V", voltage_V);
  }

  /**
   * Highest voltage that the supply may keep: a tenth above nominal. A voltage within a tenth of
   * 230 V is taken for a measured one on a supply of 230 V nominal (IEC 60038, from memory; in
   * Great Britain SI 1994/3021, read); any other is taken for nominal.
   *
   * @param voltage_V voltage entered for the site [V], positive
   * @return [V]
   */
  public static double highest_V(double voltage_V) {
    return nominal_V(voltage_V) * (1 + VOLTAGE_UP_SHARE.value());
  }

  /**
   * Volt drop of a two-core cable, ΔV = (mV/A/m)·I·L/1000.
   *
   * @param size size of the cable
   * @param current_A current [A], 0 or more
   * @param length_m length of the run, one way [m], 0 or more
   * @return volt drop [V]
   */
  public static double voltDrop_V(CableRating.Size size, double current_A, double length_m) {
    return size.voltDrop_mV_per_Am()
        * Require.notNegative("current_A", current_A)
        * Require.notNegative("length_m", length_m)
        / MV_PER_V;
  }

  /**
   * Returns whether a breaker protects a cable and carries its load: I_b ≤ I_n ≤ I_z.
   *
   * @param load_A design current I_b [A]
   * @param breaker_A rated current of the breaker I_n [A]
   * @param cable_A capacity of the cable as installed I_z [A]
   */
  public static boolean protects(double load_A, double breaker_A, double cable_A) {
    return load_A <= breaker_A && breaker_A <= cable_A;
  }
}
