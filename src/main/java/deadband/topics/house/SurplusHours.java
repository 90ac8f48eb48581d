package deadband.topics.house;

import static deadband.setup.Unit.MINUTE;

import deadband.facts.Answer;
import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Condition;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Quantity;
import deadband.facts.Says;
import deadband.facts.Size;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.loop.RelayLoop;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.ClockWindow;
import deadband.setup.Programme;
import deadband.setup.Setup;
import java.util.List;

/** Facts about the hours in which the surplus programme may answer a call. */
public final class SurplusHours {

  private static final ClockWindow WHOLE_DAY = new ClockWindow(0, 0);

  private final Limits limits;
  private final Facts facts;
  private final Setup setup;
  private final Programme surplus;

  private SurplusHours(Setup setup, Limits limits, Facts facts) {
    this.limits = limits;
    this.facts = facts;
    this.setup = setup;
    this.surplus = setup.heatPump().surplus();
  }

  @Says("The heat pump's surplus programme is switched on.")
  public record SurplusProgrammeOn(Answer answer) implements Condition {}

  /** Whether the surplus programme is on, and how long a day it is not blocked. */
  public record SurplusProgramme(Evidence evidence, Answer enabled, Quantity open_min)
      implements Case {}

  /** How long the surplus programme is blocked in the hours around noon. */
  public record SurplusBlock(
      Evidence evidence, Quantity open_min, Quantity blocked_min, double most_min)
      implements Case {}

  public static void derive(Setup setup, Limits limits, Facts facts) {
    SurplusHours topic = new SurplusHours(setup, limits, facts);
    facts.add(new SurplusProgrammeOn(facts.answer(topic.enabled())));
    topic.programme();
    topic.block();
  }

  /** Temperatures that are entered say that the programme runs; a plain no says otherwise. */
  private Derived<Boolean> enabled() {
    return Derived.enteredOnly(surplus.enabled())
        .or(Derived.of(surplus.start_C()).map(start -> true));
  }

  private Derived<Double> open_min() {
    return blockedOf(WHOLE_DAY).map(blocked_min -> WHOLE_DAY.length_min() - blocked_min);
  }

  private Derived<Double> blockedOf(ClockWindow hours) {
    return Derived.of(surplus.blocked()).map(windows -> (double) hours.sharedWith_min(windows));
  }

  private void programme() {
    Derived<Boolean> answers = Derived.all(enabled(), open_min().map(open -> open > 0));
    facts
        .into(SurplusProgramme.class, surplus.part().pointer())
        .given(answers)
        .makes(
            because ->
                new SurplusProgramme(
                    because.explained(this::neverAnswers),
                    because.answer(enabled()),
                    because.quantity(open_min())));
  }

  private Detail neverAnswers() {
    Detail.Builder detail =
        Detail.at(surplus.enabled(), surplus.blocked(), setup.relay().start_kW())
            .size(Size.kilowatts(new RelayLoop(setup).draw_kW().or(Derived.constant(1.0)).get()));
    return surplus.enabled().says(false)
        ? detail.cure(Change.of(surplus.enabled(), true)).done()
        : detail.cure(Change.of(surplus.blocked(), List.of())).done();
  }

  /** The hours around noon; a programme that never answers is another check's. */
  private void block() {
    ClockWindow noon =
        new ClockWindow(
            (int) limits.value(Limit.NOON_HOURS_FROM), (int) limits.value(Limit.NOON_HOURS_UNTIL));
    double most_min = MINUTE.round(noon.length_min() * limits.value(Limit.NOON_HOURS_BLOCKED));
    Derived<Double> blocked = blockedOf(noon);
    facts
        .into(SurplusBlock.class, surplus.blocked().pointer())
        .given(blocked)
        .makes(
            because ->
                new SurplusBlock(
                    because.explained(() -> blocksNoon(noon, blocked.get(), most_min)),
                    because.quantity(open_min()),
                    because.quantity(blocked),
                    most_min));
  }

  private Detail blocksNoon(ClockWindow noon, double blocked_min, double most_min) {
    return Detail.at(surplus.blocked())
        .observed(Measure.of("blocked around noon", blocked_min, MINUTE))
        .limit(Bound.of("permitted", most_min, limits.of(Limit.NOON_HOURS_BLOCKED), MINUTE))
        .size(Size.share(blocked_min / Math.max(1, noon.length_min())))
        .evidence(Measure.of("hours around noon", noon.length_min(), MINUTE))
        .basis("minutes of the day, " + noon)
        .done();
  }
}
