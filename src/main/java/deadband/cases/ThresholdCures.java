package deadband.cases;

import deadband.setup.Change;
import deadband.setup.Relay;
import deadband.setup.Relay.Counts;
import deadband.setup.Setup;
import deadband.setup.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Thresholds that would make the loop of a relay and what it switches stand, in the order to try
 * them: lower the stop; raise the start; count what it switches.
 *
 * <p>A negative stop, which buys while it holds, is never proposed; longer delays only mask the
 * fault. No more settings are changed than it takes.
 */
final class ThresholdCures {

  private static final double STEP_KW = 0.1;

  private final Relay relay;
  private final RelayLoop loop;
  private final Derived<Double> draw;
  private final Derived<Boolean> counted;
  private final Counts own;
  private final double reach_kW;

  private ThresholdCures(Setup setup, Derived<Double> draw, Derived<Boolean> counted, Counts own) {
    this.relay = setup.relay();
    this.loop = new RelayLoop(setup);
    this.draw = draw;
    this.counted = counted;
    this.own = own;
    Derived<Double> most = new SurplusReach(setup, loop).most_kW();
    this.reach_kW = most.isKnown() ? most.get() : Double.POSITIVE_INFINITY;
  }

  /** For a relay that calls the heat pump. */
  static ThresholdCures ofHeatPump(Setup setup) {
    RelayLoop loop = new RelayLoop(setup);
    return new ThresholdCures(setup, seenWhole(loop), loop.countsHeatPump(), Counts.HEAT_PUMP);
  }

  /** For a relay that switches an element. */
  static ThresholdCures ofElement(Setup setup, ElementLoop element) {
    return new ThresholdCures(setup, element.draw_kW(), element.countsElement(), Counts.IMMERSION);
  }

  /** A pump that is counted is counted whole; else what the sensor sees of it decides. */
  private static Derived<Double> seenWhole(RelayLoop loop) {
    return loop.countsHeatPump().is(is -> is) ? loop.draw_kW() : loop.seenDraw_kW();
  }

  /** Changes after which nothing hunts or is bought; empty where the draw is not known. */
  List<List<Change>> candidates() {
    List<List<Change>> candidates = new ArrayList<>(thresholds());
    boolean mayCount = draw.isKnown() && loop.start_kW().isKnown() && counted.is(is -> !is);
    if (mayCount) {
      candidates.add(countingTheLoad(loop.start_kW().get(), draw.get()));
    }
    return candidates;
  }

  /** Those that leave alone what is counted. */
  List<List<Change>> thresholds() {
    if (!draw.isKnown() || !loop.start_kW().isKnown()) {
      return List.of();
    }
    double start_kW = loop.start_kW().get();
    if (counted.is(is -> is)) {
      return List.of(thresholdsAbove(start_kW, draw.get()));
    }
    List<List<Change>> candidates = new ArrayList<>();
    addLowerStop(candidates, start_kW, draw.get());
    addHigherStart(candidates, draw.get());
    addStartAboveStop(candidates, draw.get());
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

  /** A start above the draw and a small stop, as long as the sun can reach it. */
  private void addHigherStart(List<List<Change>> candidates, double draw_kW) {
    boolean isSmall = loop.stop_kW().is(stop -> stop >= 0 && stop <= STEP_KW);
    double stop_kW = isSmall ? loop.stop_kW().get() : STEP_KW;
    Change start = Change.of(relay.start_kW(), above(draw_kW + stop_kW));
    if ((double) start.to() > reach_kW) {
      return;
    }
    candidates.add(isSmall ? List.of(start) : List.of(Change.of(relay.stop_kW(), stop_kW), start));
  }

  /** A start so far above the stop as it is, as long as the sun can reach it. */
  private void addStartAboveStop(List<List<Change>> candidates, double draw_kW) {
    if (loop.stop_kW().is(stop -> stop > STEP_KW && above(draw_kW + stop) <= reach_kW)) {
      candidates.add(List.of(Change.of(relay.start_kW(), above(draw_kW + loop.stop_kW().get()))));
    }
  }

  private List<Change> countingTheLoad(double start_kW, double draw_kW) {
    List<Counts> all = new ArrayList<>(relay.counts().optional().orElse(List.of()));
    all.add(own);
    all.sort(null);
    List<Change> changes = new ArrayList<>(thresholdsAbove(start_kW, draw_kW));
    changes.add(0, Change.of(relay.counts(), List.copyOf(all)));
    return List.copyOf(changes);
  }

  /** With the load counted: the stop at its draw, the start above the stop. */
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
    Derived<Double> error = loop.sensorError_kW(draw);
    return error.isKnown() ? 2 * error.get() : 0;
  }
}
