package deadband.topics.house;

import static deadband.setup.Unit.MINUTE;

import deadband.facts.Answer;
import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Quantity;
import deadband.facts.Size;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.loop.LoopForm;
import deadband.loop.RelayLoop;
import deadband.provenance.Derived;
import deadband.provenance.Provenance;
import deadband.setup.Entered;
import deadband.setup.HeatPump;
import deadband.setup.Observed;
import deadband.setup.Observed.Weather;
import deadband.setup.Relay;
import deadband.setup.Setup;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Facts about the starts, runs and pauses that were observed, held against the timers and the plate
 * of the heat pump and against what the settings as found lead to.
 *
 * <p>What was not observed is no case: there is nothing to hold against anything.
 */
public final class Observations {

  private static final double MINUTES_PER_HOUR = 60;

  private final Limits limits;
  private final Facts facts;
  private final Observed observed;
  private final HeatPump pump;
  private final Relay relay;
  private final RelayLoop loop;

  /**
   * A run, a pause or a whole cycle that was observed, against the shortest that the timers allow.
   *
   * @param said whether another observation says the same, and better
   */
  public record ObservedPhase(Evidence evidence, Answer said, Quantity seen_min, Quantity least_min)
      implements Case {}

  /** The starts per hour that were observed, and whether the settings as found explain them. */
  public record ObservedStarts(Evidence evidence, Answer explained, Quantity starts, Quantity most)
      implements Case {}

  private Observations(Setup found, Limits limits, Facts facts) {
    this.limits = limits;
    this.facts = facts;
    this.observed = found.observed();
    this.pump = found.heatPump();
    this.relay = found.relay();
    this.loop = new RelayLoop(found);
  }

  public static void derive(Setup setup, Limits limits, Facts facts) {
    Observations topic = new Observations(setup.asItWasFound(), limits, facts);
    Derived<Double> run = Derived.enteredOnly(topic.pump.minimumRun_min());
    Derived<Double> off = Derived.enteredOnly(topic.pump.minimumOff_min());
    HeatPump pump = topic.pump;
    topic.phase(
        topic.observed.typicalRun_min(), false, topic.typicalRun(), run, pump.minimumRun_min());
    topic.pause(run, off);
    topic.cycle(Derived.sum(MINUTE, run, off));
    topic.starts();
  }

  private Derived<Double> typicalRun() {
    return Derived.of(observed.typicalRun_min());
  }

  private Derived<Double> typicalPause() {
    return Derived.of(observed.typicalPause_min());
  }

  /** A run below its timer says all that a pause below its own would add. */
  private void pause(Derived<Double> run, Derived<Double> off) {
    Entered<Double> entered = observed.typicalPause_min();
    boolean said =
        typicalRun().with(least_min(run), (seen, least) -> seen < least).is(isShort -> isShort);
    phase(entered, said, typicalPause(), off, pump.minimumOff_min());
  }

  private Derived<Double> least_min(Derived<Double> timer) {
    return timer.map(min -> MINUTE.round(Math.max(0, min - limits.value(Limit.OBSERVED_TO))));
  }

  /** The longest that the cycles may have been: n starts within an hour are n − 1 whole cycles. */
  private Derived<Double> cycle_min() {
    return Derived.of(observed.startsPerHour())
        .map(starts -> starts > 1 ? MINUTE.round(MINUTES_PER_HOUR / (starts - 1)) : 1440.0);
  }

  /** Run and pause tell the cycle by themselves, and better. */
  private void cycle(Derived<Double> timers_min) {
    boolean said = observed.typicalRun_min().isEntered() && observed.typicalPause_min().isEntered();
    phase(
        observed.startsPerHour(),
        said,
        cycle_min(),
        timers_min,
        pump.minimumRun_min(),
        pump.minimumOff_min());
  }

  private void phase(
      Entered<?> entered,
      boolean said,
      Derived<Double> seen,
      Derived<Double> timer,
      Entered<?>... timers) {
    Facts.Assessment assessment = facts.into(ObservedPhase.class, entered.pointer());
    if (!entered.isEntered()) {
      assessment.none();
      return;
    }
    Derived<Double> least = least_min(timer);
    assessment
        .given(seen, least)
        .makes(
            because ->
                new ObservedPhase(
                    because.explained(() -> tooShort(entered, seen.get(), timer.get(), timers)),
                    because.answer(Derived.constant(said)),
                    because.quantity(seen),
                    because.quantity(least)));
  }

  private static Detail tooShort(
      Entered<?> entered, double seen_min, double timer_min, Entered<?>... timers) {
    return Detail.at(
            Stream.concat(Stream.of(entered), Stream.of(timers)).toArray(Entered<?>[]::new))
        .observed(Measure.of("observed", seen_min, MINUTE))
        .limit(
            Bound.calculated(
                "allowed by the timers", timer_min, MINUTE, "the heat pump's own timers"))
        .size(Size.share(timer_min / Math.max(1, seen_min) - 1))
        .done();
  }

  private void starts() {
    Entered<Double> entered = observed.startsPerHour();
    Facts.Assessment assessment = facts.into(ObservedStarts.class, entered.pointer());
    if (!entered.isEntered()) {
      assessment.none();
      return;
    }
    Derived<Double> starts = Derived.of(entered);
    Derived<Double> most =
        Derived.of(pump.startsPerHour()).or(Derived.constant(limits.value(Limit.STARTS_PER_HOUR)));
    Derived<Boolean> explained = explained();
    assessment
        .given(explained, starts, most)
        .makes(
            because ->
                new ObservedStarts(
                    because.explained(() -> unexplained(starts.get(), most.get())),
                    because.answer(explained),
                    because.quantity(starts),
                    because.quantity(most)));
  }

  /** By day a loop that short-cycles explains many starts, and so does a relay without delays. */
  private Derived<Boolean> explained() {
    Derived<Boolean> byDay =
        Derived.constant(
            !observed.weather().says(Weather.NIGHT) && !observed.weather().says(Weather.DULL));
    Derived<Boolean> undelayed =
        Derived.constant(relay.startDelay_min().says(0.0) || relay.stopDelay_min().says(0.0));
    return Derived.all(loop.fitted(), byDay, Derived.any(undelayed, shortCycles()));
  }

  private Derived<Boolean> shortCycles() {
    Optional<LoopForm> form = loop.form();
    Derived<Boolean> noGap = loop.gap_kW().map(gap -> gap <= 0);
    return form.isPresent()
        ? Derived.any(noGap, loop.gap_kW().map(gap -> !form.get().hunting().isEmpty()))
        : noGap.is(is -> is) ? noGap : Derived.from(open(), () -> false);
  }

  private Provenance open() {
    return loop.gap_kW()
        .provenance()
        .and(Derived.of(relay.counts()).provenance())
        .and(loop.seenDraw_kW().provenance())
        .and(loop.heater_kW().provenance());
  }

  private Detail unexplained(double starts, double most) {
    Detail.Builder detail =
        Detail.at(observed.startsPerHour(), pump.startsPerHour())
            .observed(Measure.of("starts per hour observed", starts, "1/h"))
            .size(Size.share(starts / Math.max(1, most) - 1))
            .basis("closed form of the relay's loop with the settings as found");
    return pump.startsPerHour().isEntered()
        ? detail
            .limit(
                new Bound(
                    Measure.of("starts per hour allowed", most, "1/h"),
                    pump.startsPerHour().pointer().dotted(),
                    Bound.THIS_SETUP,
                    "as entered",
                    true))
            .done()
        : detail
            .limit(Bound.of("starts per hour allowed", most, limits.of(Limit.STARTS_PER_HOUR)))
            .done();
  }
}
