package deadband.topics.thresholds;

import deadband.document.Pointer;
import deadband.facts.Bound;
import deadband.facts.Detail;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Size;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.loop.RelayLoop;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.Entered;
import deadband.setup.Relay;
import deadband.setup.Setup;
import deadband.setup.Unit;
import deadband.trade.HuntingCycle;
import java.util.List;

/** Facts about the delays of the relay: what they keep away, and what they cost. */
public final class RelayDelays {

  /** Three to five minutes keep a passing cloud away (common practice). */
  private static final double CLOUD_DELAY_MIN = 3;

  private final Setup setup;
  private final Limits limits;
  private final Facts facts;
  private final Relay relay;
  private final RelayLoop loop;

  private RelayDelays(Setup setup, Limits limits, Facts facts) {
    this.setup = setup;
    this.limits = limits;
    this.facts = facts;
    this.relay = setup.relay();
    this.loop = new RelayLoop(setup);
  }

  public static void derive(Setup setup, Limits limits, Facts facts) {
    RelayDelays topic = new RelayDelays(setup, limits, facts);
    topic.shortestPhase(setup.relay().stopDelay_min(), setup.heatPump().minimumRun_min());
    topic.shortestPhase(setup.relay().startDelay_min(), setup.heatPump().minimumOff_min());
    topic.cloudCost();
  }

  private void shortestPhase(Entered<Double> delay, Entered<Double> timer) {
    Derived<Double> held = held_min(delay, timer);
    double starts = new HuntingEvidence(setup, loop).startsPerHour();
    Derived<Double> allowed = allowedPerHour();
    facts
        .into(ShortestPhase.class, delay.pointer())
        .given(held, allowed)
        .foundOnlyWith(held.is(min -> min > 0) ? openStarts() : List.of())
        .clearOnlyWith(openPump(delay))
        .makes(
            because ->
                new ShortestPhase(
                    because.explained(() -> unheld(delay, timer, held.get())),
                    because.quantity(Derived.of(delay)),
                    because.quantity(held),
                    because.quantity(Derived.constant(starts)),
                    because.quantity(allowed)));
  }

  /** What nothing is entered of has no timers that could stand in for a delay. */
  private List<Pointer> openPump(Entered<Double> delay) {
    return Derived.of(delay).is(min -> min <= 0) ? loop.fitted().provenance().missing() : List.of();
  }

  /**
   * How often the compressor may start: as its plate says, else as is usual. A relay that compares
   * a mean has a delay of sorts: then any timer will do.
   */
  private Derived<Double> allowedPerHour() {
    if (relay.reads().says(Relay.Reads.MEAN)) {
      return Derived.of(relay.reads()).map(mean -> Double.MAX_VALUE);
    }
    return Derived.of(setup.heatPump().startsPerHour())
        .or(Derived.constant(limits.value(Limit.STARTS_PER_HOUR)));
  }

  /** Each of these may still space the starts, or allow as many. */
  private List<Pointer> openStarts() {
    return Derived.missingOf(
        List.of(
            Derived.of(relay.startDelay_min()),
            Derived.of(relay.stopDelay_min()),
            Derived.of(relay.reads()),
            Derived.of(setup.heatPump().startsPerHour())));
  }

  /** The relay's own delay keeps a phase up, or else the heat pump's timer does. */
  private static Derived<Double> held_min(Entered<Double> delay, Entered<Double> timer) {
    Derived<Double> own = Derived.of(delay);
    Derived<Double> pump = Derived.enteredOnly(timer);
    if (own.is(min -> min > 0)) {
      return own;
    }
    return pump.is(min -> min > 0) ? pump : own.with(Derived.of(timer), Math::max);
  }

  private Detail unheld(Entered<Double> delay, Entered<Double> timer, double held_min) {
    double starts = new HuntingEvidence(setup, loop).startsPerHour();
    Entered<Double> plate = setup.heatPump().startsPerHour();
    return Detail.at(delay, timer)
        .observed(Measure.of("starts per hour allowed by the timers", starts, "1/h"))
        .limit(
            plate.isEntered()
                ? Bound.entered("starts per hour", allowedPerHour().get(), Unit.NONE, plate)
                : Bound.of(
                    "starts per hour",
                    limits.value(Limit.STARTS_PER_HOUR),
                    limits.of(Limit.STARTS_PER_HOUR)))
        .size(Size.startsPerHour(starts))
        .evidence(Measure.of("held for", held_min, Unit.MINUTE))
        .cure(Change.of(delay, CLOUD_DELAY_MIN))
        .cure(
            Change.of(relay.startDelay_min(), CLOUD_DELAY_MIN),
            Change.of(relay.stopDelay_min(), CLOUD_DELAY_MIN))
        .done();
  }

  private void cloudCost() {
    Derived<Double> bought =
        loop.draw_kW()
            .with(
                Derived.of(relay.stopDelay_min()),
                (draw_kW, delay_min) ->
                    Unit.KILOWATT_HOUR.round(HuntingCycle.cloudCost_kWh(draw_kW, delay_min, 0)));
    double tolerated_kWh = limits.value(Limit.CLOUD_COST);
    facts
        .into(CloudCost.class, relay.stopDelay_min().pointer())
        .given(bought)
        .clearOnlyWith(loop.openDraw())
        .makes(
            because ->
                new CloudCost(
                    because.explained(() -> lingers(bought.get())),
                    because.quantity(bought),
                    tolerated_kWh));
  }

  private Detail lingers(double bought_kWh) {
    Limits.Entry limit = limits.of(Limit.CLOUD_COST);
    double draw_kW = loop.draw_kW().get();
    return Detail.at(relay.stopDelay_min())
        .observed(Measure.of("import in one cloud", bought_kWh, Unit.KILOWATT_HOUR))
        .limit(Bound.of("tolerated in one cloud", limit.value(), limit))
        .size(Size.kilowatts(draw_kW))
        .evidence(Measure.of("power input of the heat pump", draw_kW, Unit.KILOWATT))
        .cure(Change.of(relay.stopDelay_min(), Math.floor(60 * limit.value() / draw_kW)))
        .basis("control loop arithmetic")
        .done();
  }
}
