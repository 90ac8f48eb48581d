package deadband.trade;

/** The contact that calls a heat pump, and what two contacts together ask of it. */
public final class SignalContact {
  /** Shortest time the SG Ready contacts hold a state. */
  public static final Figure SG_READY_HOLD_MIN =
      new Figure("minimum duration of an SG Ready state", 10, "min", "none", Known.MEMORY);

  private SignalContact() {}

  /**
   * States of the SG Ready label, contacts 1 and 2 in order (label text as quoted; second-hand).
   */
  public enum SgReady {
    /** 1:0, for two hours at most. */
    BLOCK(1, true, false),
    /** 0:0. */
    NORMAL(2, false, false),
    /** 0:1, a recommendation to run harder. */
    RECOMMENDATION(3, false, true),
    /** 1:1, a start command, with or without electric auxiliary. */
    START_COMMAND(4, true, true);

    private final int state;
    private final boolean first;
    private final boolean second;

    SgReady(int state, boolean first, boolean second) {
      this.state = state;
      this.first = first;
      this.second = second;
    }

    /** Number of the state, 1 to 4. */
    public int state() {
      return state;
    }

    /** State of two contacts. */
    public static SgReady of(boolean first, boolean second) {
      for (SgReady each : values()) {
        if (each.first == first && each.second == second) {
          return each;
        }
      }
      throw new AssertionError("two contacts have four states");
    }

    /**
     * State by its number.
     *
     * @throws IllegalArgumentException where it is not 1 to 4
     */
    public static SgReady of(int state) {
      for (SgReady each : values()) {
        if (each.state == state) {
          return each;
        }
      }
      throw new IllegalArgumentException("state " + state + " is not one of 1 to 4");
    }
  }
}
