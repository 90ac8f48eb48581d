package deadband.plant;

import deadband.facts.Bound;
import deadband.provenance.Derived;
import deadband.setup.Entered;
import deadband.setup.HeatPump;
import deadband.setup.Programme;
import deadband.setup.Relay;
import deadband.setup.Setup;
import deadband.setup.Unit;
import deadband.trade.CompressorReach;
import deadband.trade.HuntingCycle;
import java.util.List;

/** The heat pump's two hot water programmes, and what bounds them. */
public final class Programmes {

  private static final double STEP_MIN = 1;
  private static final String REACH = "maximum the compressor reaches";

  private final HeatPump heatPump;
  private final Relay relay;
  private final SensorTolerance tolerance;

  public Programmes(Setup setup) {
    this.heatPump = setup.heatPump();
    this.relay = setup.relay();
    this.tolerance = new SensorTolerance(setup);
  }

  /** One programme, and whether anything calls it. */
  public record Named(String name, Programme programme, Derived<Boolean> used) {}

  public List<Named> all() {
    return List.of(
        new Named("everyday", heatPump.everyday(), Derived.constant(true)),
        new Named("surplus", heatPump.surplus(), surplusIsCalled()));
  }

  public Derived<Boolean> fitted() {
    return Derived.of(heatPump.part().isFitted());
  }

  /**
   * Whether a relay may call the surplus programme: not where it is entered to drive another thing.
   */
  public Derived<Boolean> surplusIsCalled() {
    Derived<Boolean> fitted = Derived.of(relay.part().isFitted());
    Derived<Boolean> drives =
        Derived.of(relay.drives()).map(driven -> driven == Relay.Drives.HEAT_PUMP);
    if (fitted.is(is -> !is)) {
      return fitted;
    }
    return drives.isKnown() ? drives : Derived.constant(true);
  }

  /** The warmest the compressor makes the tank, as the flow allows. */
  public Derived<Double> highestTank_C() {
    return Derived.of(heatPump.maximumFlow_C())
        .with(
            Derived.of(heatPump.flowAboveTank_K()),
            (flow, above) -> Unit.CELSIUS.round(CompressorReach.highestTank_C(flow, above)));
  }

  /** Tolerance of the heat pump's sensor there. */
  public Derived<Double> toleranceAtReach_K() {
    return tolerance.heatPump_K(highestTank_C());
  }

  /** The highest reading that is sure to be reached: less the sensor's tolerance, where known. */
  public Derived<Double> reach_C() {
    Derived<Double> tolerance_K = toleranceAtReach_K();
    return tolerance_K.isKnown()
        ? Derived.difference(Unit.CELSIUS, highestTank_C(), tolerance_K)
        : highestTank_C();
  }

  /**
   * What a temperature that is out of reach is held against: what the flow allows, where it lies
   * above even that; else the reach less the sensor's tolerance, which is a question. How far the
   * flow must lie above the tank is known from memory where it is not entered: then the flow
   * itself.
   */
  public Bound reachBound(double wanted_C) {
    boolean entered = heatPump.flowAboveTank_K().isEntered();
    Derived<Double> asSet_C = entered ? highestTank_C() : Derived.of(heatPump.maximumFlow_C());
    if (asSet_C.is(most_C -> wanted_C > most_C)) {
      return Bound.calculated(
          REACH,
          asSet_C.get(),
          Unit.CELSIUS,
          entered ? "maximum flow less flow above tank" : "maximum flow");
    }
    return Bound.calculated(
            REACH,
            reach_C().get(),
            Unit.CELSIUS,
            "maximum flow less flow above tank and sensor tolerance")
        .brokenByToleranceAlone();
  }

  /** The least run, as a limit to hold a run against. */
  public Bound minimumRun(double least_min) {
    Entered<Double> entered = heatPump.minimumRun_min();
    return entered.isEntered()
        ? Bound.entered("minimum run", least_min, Unit.MINUTE, entered)
        : Bound.assumed("minimum run", least_min, Unit.MINUTE, "default");
  }

  /** Starts an hour where only the heat pump's own timers space them, for ranking. */
  public double startsPerHour() {
    double run_min = Math.max(STEP_MIN, Derived.of(heatPump.minimumRun_min()).get());
    double off_min = Derived.of(heatPump.minimumOff_min()).get();
    return new HuntingCycle(run_min, off_min).startsPerHour();
  }
}
