package deadband.plant;

import deadband.loop.ElementLoop;
import deadband.loop.RelayLoop;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.Relay;
import deadband.setup.Relay.Counts;
import deadband.setup.Setup;
import deadband.setup.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Thresholds that would make the loop of a relay and what it switches stand, in the order to try
 * them: count the heat pump; lower the stop and keep the start; start and stop both. An element
 * that the relay switches by itself is counted last.
 *
 * <p>A negative stop, which buys while it holds, is never proposed, nor a start further up than the
 * smallest stop asks for; longer delays only mask the fault.
 */
public final class ThresholdCures {

  private static final double STEP_KW = 0.1;

  /** A stop up to here is kept where the start moves: our own choice. */
  private static final double SMALL_STOP_KW = 0.3;

  /** How far below the peak of a clear day a start is kept, so that it lasts: our own choice. */
  private static final double REACH_SHARE = 0.1;

  private final Setup setup;
  private final Relay relay;
  private final RelayLoop loop;
  private final Derived<Double> draw;
  private final Derived<Boolean> counted;
  private final Counts own;

  private ThresholdCures(Setup setup, Derived<Double> draw, Derived<Boolean> counted, Counts own) {
    this.setup = setup;
    this.relay = setup.relay();
    this.loop = new RelayLoop(setup);
    this.draw = draw;
    this.counted = counted;
    this.own = own;
  }

  /** For a relay that calls the heat pump. */
  public static ThresholdCures ofHeatPump(Setup setup) {
    RelayLoop loop = new RelayLoop(setup);
    return new ThresholdCures(setup, seenWhole(loop), loop.countsHeatPump(), Counts.HEAT_PUMP);
  }

  /** For a relay that switches an element. */
  public static ThresholdCures ofElement(Setup setup, ElementLoop element) {
    return new ThresholdCures(setup, element.draw_kW(), element.countsElement(), Counts.IMMERSION);
  }

  /** A pump that is counted is counted whole; else what the sensor sees of it decides. */
  private static Derived<Double> seenWhole(RelayLoop loop) {
    return loop.countsHeatPump().is(is -> is) ? loop.draw_kW() : loop.seenDraw_kW();
  }

  /** Changes after which nothing hunts or is bought; empty where the draw is not known. */
  public List<List<Change>> candidates() {
    List<List<Change>> candidates = new ArrayList<>(thresholds());
    boolean mayCount = draw.isKnown() && loop.start_kW().isKnown() && counted.is(is -> !is);
    if (mayCount) {
      int first = own == Counts.HEAT_PUMP ? 0 : candidates.size();
      candidates.add(first, countingTheLoad(loop.start_kW().get(), draw.get()));
    }
    return candidates;
  }

  /** Those that leave alone what is counted. */
  public List<List<Change>> thresholds() {
    if (!draw.isKnown() || !loop.start_kW().isKnown()) {
      return List.of();
    }
    double start_kW = loop.start_kW().get();
    if (counted.is(is -> is)) {
      return List.of(thresholdsAbove(start_kW, draw.get()));
    }
    List<List<Change>> candidates = new ArrayList<>();
    addLowerStop(candidates, start_kW, draw.get());
    candidates.add(startAndStop(draw.get()));
    return candidates;
  }

  /**
   * Starts below the one that is entered: the lowest at which nothing hunts, else the highest on
   * the dial that a clear day reaches.
   */
  public List<List<Change>> withinReach() {
    List<List<Change>> candidates = new ArrayList<>();
    if (draw.isKnown() && loop.start_kW().isKnown()) {
      candidates.addAll(
          counted.is(is -> is)
              ? List.of(thresholdsAbove(0, draw.get()))
              : List.of(startAndStop(draw.get())));
    }
    Derived<Double> reach = new SurplusReach(setup, loop).clearDay_kW();
    if (reach.isKnown()) {
      double spare_kW = Math.max(STEP_KW, Unit.KILOWATT.round(REACH_SHARE * reach.get()));
      candidates.add(List.of(Change.of(relay.start_kW(), Dial.down_kW(reach.get() - spare_kW))));
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

  /** A small stop and a start so far above it. */
  private List<Change> startAndStop(double draw_kW) {
    boolean isSmall = loop.stop_kW().is(stop -> stop >= 0 && stop <= SMALL_STOP_KW);
    double stop_kW = isSmall ? loop.stop_kW().get() : STEP_KW;
    Change start = Change.of(relay.start_kW(), above(draw_kW + stop_kW));
    return isSmall ? List.of(start) : List.of(Change.of(relay.stop_kW(), stop_kW), start);
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
