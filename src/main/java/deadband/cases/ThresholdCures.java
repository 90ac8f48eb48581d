package deadband.cases;

import deadband.setup.Change;
import deadband.setup.Relay;
import deadband.setup.Relay.Counts;
import deadband.setup.Setup;
import deadband.setup.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Thresholds that would make the loop of relay and heat pump stand, in the order to try them: lower
 * the stop; raise the start as well; count the heat pump's draw.
 *
 * <p>A negative stop, which buys while it holds, is never proposed; longer delays only mask the
 * fault.
 */
final class ThresholdCures {

  private static final double STEP_KW = 0.1;

  private final Relay relay;
  private final RelayLoop loop;

  ThresholdCures(Setup setup) {
    this.relay = setup.relay();
    this.loop = new RelayLoop(setup);
  }

  /** Pairs of thresholds without hunting or import; empty where the draw is not known. */
  List<List<Change>> candidates() {
    List<List<Change>> candidates = new ArrayList<>();
    if (!loop.draw_kW().isKnown() || !loop.start_kW().isKnown()) {
      return candidates;
    }
    double draw_kW = loop.draw_kW().get();
    double start_kW = loop.start_kW().get();
    boolean counted = loop.countsHeatPump().is(is -> is);
    if (counted) {
      addCounted(candidates, start_kW, draw_kW);
      return candidates;
    }
    addLowerStop(candidates, start_kW, draw_kW);
    addHigherStart(candidates, draw_kW);
    if (relay.counts().isTold()) {
      addCountingThePump(candidates, start_kW, draw_kW);
    }
    return candidates;
  }

  /**
   * The highest stop, not below zero, that leaves the draw and the meter's error below the start.
   */
  private void addLowerStop(List<List<Change>> candidates, double start_kW, double draw_kW) {
    double stop_kW = below(start_kW - draw_kW);
    if (stop_kW >= 0) {
      candidates.add(List.of(Change.of(relay.stop_kW(), stop_kW)));
    }
  }

  private void addHigherStart(List<List<Change>> candidates, double draw_kW) {
    double start_kW = above(draw_kW + STEP_KW);
    if (start_kW <= reach_kW()) {
      candidates.add(
          List.of(Change.of(relay.stop_kW(), STEP_KW), Change.of(relay.start_kW(), start_kW)));
    }
  }

  private void addCountingThePump(List<List<Change>> candidates, double start_kW, double draw_kW) {
    List<Counts> counted = new ArrayList<>(relay.counts().optional().orElseThrow());
    counted.add(Counts.HEAT_PUMP);
    List<Change> changes = new ArrayList<>(thresholdsAbove(start_kW, draw_kW));
    changes.add(0, Change.of(relay.counts(), List.copyOf(counted)));
    candidates.add(List.copyOf(changes));
  }

  private void addCounted(List<List<Change>> candidates, double start_kW, double draw_kW) {
    candidates.add(thresholdsAbove(start_kW, draw_kW));
  }

  /** With the pump counted: the stop at its draw, the start above the stop. */
  private List<Change> thresholdsAbove(double start_kW, double draw_kW) {
    double stop_kW = Dial.up_kW(draw_kW);
    double needed_kW = above(stop_kW);
    return start_kW >= needed_kW
        ? List.of(Change.of(relay.stop_kW(), stop_kW))
        : List.of(Change.of(relay.stop_kW(), stop_kW), Change.of(relay.start_kW(), needed_kW));
  }

  /** The highest value on the dial that lies below this by more than the meter's margin. */
  private double below(double power_kW) {
    double most_kW = Unit.KILOWATT.round(power_kW);
    double dial_kW = Dial.down_kW(Unit.KILOWATT.round(most_kW - meterMargin_kW()));
    return dial_kW < most_kW ? dial_kW : Dial.down_kW(dial_kW - STEP_KW);
  }

  /** The lowest value on the dial that lies above this by more than the meter's margin. */
  private double above(double power_kW) {
    double least_kW = Unit.KILOWATT.round(power_kW);
    double dial_kW = Dial.up_kW(Unit.KILOWATT.round(least_kW + meterMargin_kW()));
    return dial_kW > least_kW ? dial_kW : Dial.up_kW(dial_kW + STEP_KW);
  }

  private double meterMargin_kW() {
    Derived<Double> error = loop.sensorError_kW(loop.draw_kW());
    return error.isKnown() ? 2 * error.get() : 0;
  }

  private double reach_kW() {
    return loop.reach_kW().isKnown() ? loop.reach_kW().get() : Double.POSITIVE_INFINITY;
  }
}
