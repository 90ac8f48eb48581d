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
          "maximum temperature of stored water",
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
      new Figure(
          "maximum temperature of an energy cut-out", 90, "°C", "textbook", Known.SECOND_HAND);

  /** Margin between the tank's peak and the cut-out. */
  public static final Figure CUT_OUT_MARGIN_K =
      new Figure(
          "margin between maximum tank temperature and cut-out", 10, "K", "none", Known.MEMORY);

  private SafetyChain() {}

  /** Classes of combined temperature and pressure relief valve (prEN 1490:2025, a draft). */
  // Error Prone cannot see that a record of numbers and text never changes.
  @SuppressWarnings("ImmutableEnumChecker")
  public enum ReliefClass {
    A(90, 95),
    B(75, 80);

    /** How the classes are known: a draft holds no hazard. */
    public static final Known KNOWN = Known.DRAFT;

    private final ValidRange opens_C;

    ReliefClass(double from_C, double to_C) {
      this.opens_C = new ValidRange("relief valve opening", from_C, to_C, "°C");
    }

    /** Temperatures at which the valve opens [°C]. */
    public ValidRange opens_C() {
      return opens_C;
    }
  }
}
