package deadband.trade;

/**
 * The barriers that keep stored water from boiling, and the order they must stand in.
 *
 * <p>Opening temperature of the controls &lt; immersion thermostat &lt; cut-out &lt; relief &lt;
 * 100 °C, for each heat source. The data plate, local codes and licensed practice outrank every
 * figure here.
 */
public final class SafetyChain {
  /** Stored water never above this. */
  public static final Figure STORED_WATER_C =
      new Figure(
          "stored water never above",
          100,
          "°C",
          "Building Regulations (England and Wales) G3; Scotland 4.9",
          Known.READ);

  /** Devices besides the thermostat on an unvented store. */
  public static final Figure INDEPENDENT_DEVICES =
      new Figure(
          "independent devices besides the thermostat, unvented store",
          2,
          "",
          "Approved Document G",
          Known.SECOND_HAND);

  /** Highest temperature of a non-self-resetting energy cut-out; the data plate outranks it. */
  public static final Figure CUT_OUT_C =
      new Figure("energy cut-out at most", 90, "°C", "textbook", Known.SECOND_HAND);

  /** Usual lower end of an energy cut-out. */
  public static final Figure CUT_OUT_USUAL_FROM_C =
      new Figure("energy cut-out, usually from", 80, "°C", "textbook", Known.SECOND_HAND);

  /** Usual upper end of an energy cut-out. */
  public static final Figure CUT_OUT_USUAL_TO_C =
      new Figure("energy cut-out, usually to", 89, "°C", "textbook", Known.SECOND_HAND);

  /** Margin between the tank's peak and the cut-out. */
  public static final Figure CUT_OUT_MARGIN_K =
      new Figure("margin between tank peak and cut-out", 10, "K", "none", Known.MEMORY);

  private SafetyChain() {}

  /** Classes of combined temperature and pressure relief valve (prEN 1490, abstract; read). */
  // Error Prone cannot see that a record of numbers and text never changes.
  @SuppressWarnings("ImmutableEnumChecker")
  public enum ReliefClass {
    A(90, 95),
    B(75, 80);

    private final ValidRange opens_C;

    ReliefClass(double from_C, double to_C) {
      this.opens_C = new ValidRange("relief valve opening", from_C, to_C, "°C");
    }

    /** Temperatures at which the valve opens [°C]. */
    public ValidRange opens_C() {
      return opens_C;
    }
  }

  /**
   * Returns whether the barriers of one heat source stand in order, each strictly below the next.
   *
   * @param opening_C temperature at which the controls open [°C]
   * @param thermostat_C its own thermostat [°C]
   * @param cutOut_C its cut-out [°C]
   * @param relief_C temperature relief of the store [°C]
   */
  public static boolean inOrder(
      double opening_C, double thermostat_C, double cutOut_C, double relief_C) {
    return opening_C < thermostat_C
        && thermostat_C < cutOut_C
        && cutOut_C < relief_C
        && relief_C < STORED_WATER_C.value();
  }

  /**
   * Room between the hottest the tank should get and the cut-out.
   *
   * @param cutOut_C cut-out [°C]
   * @param peak_C hottest the tank should get [°C]
   * @return [K], negative where the peak lies above the cut-out
   */
  public static double margin_K(double cutOut_C, double peak_C) {
    return cutOut_C - peak_C;
  }
}
