package deadband.dayrun;

import deadband.trade.ControlLoop;
import java.util.Set;

/**
 * The surplus relay, and what its contact means to the heat pump: closes when what it counts has
 * reached the start for long enough, opens when it has fallen to the stop for long enough. Compared
 * in whole watts.
 */
public final class RelayModel {
  private final double start_W;
  private final double stop_W;
  private final int startSteps;
  private final int stopSteps;
  private final Call call;
  private boolean closed;
  private int steps;

  RelayModel(Spec spec, StepLength step) {
    start_W = ControlLoop.watts(spec.start_kW);
    stop_W = ControlLoop.watts(spec.stop_kW);
    startSteps = step.delay(spec.startDelay_min);
    stopSteps = step.delay(spec.stopDelay_min);
    call = spec.call;
  }

  /** When the heat pump takes the contact for a surplus call. */
  public enum Call {
    WHILE_CLOSED,
    /** The sense of the contact is reversed. */
    WHILE_OPEN,
    /** The contact means something else to it. */
    NEVER
  }

  /**
   * How the relay is set.
   *
   * @param counts what it counts as surplus
   * @param start_kW closes at this and above [kW]; infinite for a relay that never closes
   * @param stop_kW opens at this and below [kW]
   * @param startDelay_min time at or above the start before it closes [min]; at least one step
   * @param stopDelay_min time at or below the stop before it opens [min]; at least one step
   * @param call when the heat pump takes it for a call
   */
  public record Spec(
      Set<Counted> counts,
      double start_kW,
      double stop_kW,
      double startDelay_min,
      double stopDelay_min,
      Call call) {
    public Spec {
      counts = Set.copyOf(counts);
    }

    /** No relay: nothing ever calls for surplus. */
    public static Spec none() {
      return new Spec(
          Set.of(), Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1, 1, Call.WHILE_CLOSED);
    }
  }

  boolean closed() {
    return closed;
  }

  /** Whether the heat pump sees a surplus call. */
  boolean calls() {
    return switch (call) {
      case WHILE_CLOSED -> closed;
      case WHILE_OPEN -> !closed;
      case NEVER -> false;
    };
  }

  /** Looks at one step and decides for the next; true where it closes now. */
  boolean closes(double counted_kW) {
    double counted_W = ControlLoop.watts(counted_kW);
    boolean beyond = closed ? counted_W <= stop_W : counted_W >= start_W;
    steps = beyond ? steps + 1 : 0;
    if (steps < (closed ? stopSteps : startSteps)) {
      return false;
    }
    steps = 0;
    closed = !closed;
    return closed;
  }
}
