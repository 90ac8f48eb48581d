package deadband.topics.house;

import static deadband.setup.Unit.CELSIUS;
import static deadband.setup.Unit.KILOWATT_HOUR;
import static deadband.setup.Unit.LITRE;
import static deadband.setup.Unit.MINUTE;

import deadband.document.Pointer;
import deadband.facts.Answer;
import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Condition;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Presence;
import deadband.facts.Quantity;
import deadband.facts.Says;
import deadband.facts.Size;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.plant.TankTop;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.ClockWindow;
import deadband.setup.Entered;
import deadband.setup.Immersion;
import deadband.setup.Programme;
import deadband.setup.Setup;
import deadband.setup.Tank;
import deadband.trade.StoredHeat;
import deadband.trade.Water;
import java.util.List;
import java.util.Optional;

/** Facts about running the house: what heats the tank when, by which clock, and what cools it. */
public final class HouseRunning {

  private static final int DAY_MIN = 1440;

  private final Setup setup;
  private final Limits limits;
  private final Facts facts;
  private final Programme everyday;
  private final Immersion heater;

  @Says("A heat pump or an immersion heater is fitted.")
  public record HeatPumpOrImmersionFitted(Answer answer) implements Presence {}

  @Says("A heat pump heats the tank every day, whatever the surplus.")
  public record HeatPumpHeatsEveryDay(Answer answer) implements Condition {}

  @Says("A timer feeds the immersion heater.")
  public record TimerFeedsImmersion(Answer answer) implements Condition {}

  @Says("The everyday programme runs by the clock.")
  public record EverydayProgrammeTimed(Answer answer) implements Condition {}

  @Says("The immersion thermostat opens above the everyday stop.")
  public record ImmersionHeatsFurther(Answer answer) implements Condition {}

  /** What heats the tank when there is no surplus. */
  public record HeatWithoutSun(Evidence evidence) implements Case {}

  /** A time at which the everyday programme is to run, and how much of it is blocked. */
  public record ProgrammeTime(Evidence evidence, double asked_min, Quantity blocked_min)
      implements Case {}

  /** How long after the end of an everyday run a timer switches the immersion heater on. */
  public record HeaterTimer(Evidence evidence, Quantity afterRun_min, double most_min)
      implements Case {}

  /** How far the clock of the controls is out. */
  public record ClockError(Evidence evidence, Quantity off_min, double most_min) implements Case {}

  /** The water at a tap, against the hottest that the settings allow. */
  public record TapReading(Evidence evidence, Quantity tap_C, Quantity hottest_C) implements Case {}

  /** How long a day the circulation runs. */
  public record CirculationTime(Evidence evidence, Quantity runs_min, double most_min)
      implements Case {}

  /** The volume of the tank for each person in the house. */
  public record StorePerPerson(Evidence evidence, Quantity each_L, double least_L)
      implements Case {}

  private HouseRunning(Setup setup, Limits limits, Facts facts) {
    this.setup = setup;
    this.limits = limits;
    this.facts = facts;
    this.everyday = setup.heatPump().everyday();
    this.heater = setup.immersion();
  }

  public static void derive(Setup setup, Limits limits, Facts facts) {
    HouseRunning topic = new HouseRunning(setup, limits, facts);
    topic.conditions();
    topic.heatWithoutSun();
    topic.programmeTimes();
    topic.heaterTimers();
    topic.clock();
    new HouseRunning(setup.asItWasFound(), limits, facts).tap();
    topic.circulation();
    topic.people();
  }

  private Derived<Boolean> heatPumpFitted() {
    return Derived.of(setup.heatPump().part().isFitted());
  }

  private Derived<Boolean> heaterFitted() {
    return Derived.of(heater.part().isFitted());
  }

  private static Derived<Boolean> some(Entered<List<ClockWindow>> windows) {
    return Derived.of(windows).map(entered -> !entered.isEmpty());
  }

  private Derived<Boolean> fedByTimer() {
    return Derived.all(heaterFitted(), some(heater.timed()));
  }

  private void conditions() {
    facts.add(
        new HeatPumpOrImmersionFitted(facts.answer(Derived.any(heatPumpFitted(), heaterFitted()))));
    facts.add(
        new HeatPumpHeatsEveryDay(
            facts.answer(Derived.all(heatPumpFitted(), Derived.of(everyday.enabled())))));
    facts.add(new TimerFeedsImmersion(facts.answer(fedByTimer())));
    facts.add(new EverydayProgrammeTimed(facts.answer(some(everyday.timed()))));
    facts.add(new ImmersionHeatsFurther(facts.answer(liftsAboveRun())));
  }

  private void heatWithoutSun() {
    facts
        .into(HeatWithoutSun.class, setup.tank().part().pointer())
        .makes(because -> new HeatWithoutSun(because.explained(this::unheated)));
  }

  private Detail unheated() {
    Detail.Builder detail = Detail.at(everyday.enabled(), heater.timed());
    return everyday.enabled().says(false)
        ? detail.cure(Change.of(everyday.enabled(), true)).done()
        : detail.done();
  }

  /** A programme that no clock starts may run all day. */
  private void programmeTimes() {
    List<ClockWindow> timed = everyday.timed().optional().orElse(List.of());
    if (timed.isEmpty()) {
      programmeTime(everyday.blocked().pointer(), new ClockWindow(0, 0));
    }
    for (int i = 0; i < timed.size(); i++) {
      programmeTime(everyday.timed().pointer().child(i), timed.get(i));
    }
  }

  private void programmeTime(Pointer asked, ClockWindow window) {
    Derived<Double> blocked =
        Derived.of(everyday.blocked()).map(windows -> (double) window.sharedWith_min(windows));
    double asked_min = window.length_min();
    facts
        .into(ProgrammeTime.class, asked)
        .given(blocked)
        .clearOnlyWith(Derived.of(everyday.timed()).provenance().missing())
        .makes(
            because ->
                new ProgrammeTime(
                    because.explained(() -> shutOut(asked, asked_min, blocked.get())),
                    asked_min,
                    because.quantity(blocked)));
  }

  private Detail shutOut(Pointer asked, double asked_min, double blocked_min) {
    Pointer blocked = everyday.blocked().pointer();
    Detail.Builder detail = asked.equals(blocked) ? Detail.at(blocked) : Detail.at(asked, blocked);
    return detail
        .observed(Measure.of("blocked part of the window", blocked_min, MINUTE))
        .limit(Bound.calculated("length of the window", asked_min, MINUTE, "window as entered"))
        .size(Size.WHOLE)
        .basis("minutes of the day")
        .done();
  }

  /** A top-up costs least right after the heat pump has brought the tank to its stop. */
  private void heaterTimers() {
    Pointer pointer = heater.timed().pointer();
    if (!heater.timed().isEntered()) {
      facts.into(HeaterTimer.class, pointer).waitsFor(heater.timed());
      return;
    }
    List<ClockWindow> timed = heater.timed().optional().orElseThrow();
    if (timed.isEmpty()) {
      facts.into(HeaterTimer.class, pointer).none();
    }
    for (int i = 0; i < timed.size(); i++) {
      heaterTimer(pointer.child(i), timed.get(i));
    }
  }

  private void heaterTimer(Pointer subject, ClockWindow window) {
    double most_min = limits.value(Limit.TOP_UP_AFTER_RUN);
    Derived<Double> after = Derived.of(everyday.timed()).map(runs -> after_min(runs, window));
    facts
        .into(HeaterTimer.class, subject)
        .given(after)
        .makes(
            because ->
                new HeaterTimer(
                    because.explained(() -> outOfStep(subject, after.get(), most_min)),
                    because.quantity(after),
                    most_min));
  }

  /** After the last of the runs; without any, no run comes before it. */
  private static double after_min(List<ClockWindow> runs, ClockWindow topUp) {
    return runs.stream()
        .mapToDouble(run -> after_min(run, topUp))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * Minutes from the end of a run to the start of a top-up; none where it starts during the run.
   */
  private static double after_min(ClockWindow run, ClockWindow topUp) {
    return run.holds(topUp.from_min())
        ? 0
        : Math.floorMod(topUp.from_min() - run.until_min(), DAY_MIN);
  }

  private Derived<Boolean> liftsAboveRun() {
    return Derived.of(heater.thermostat_C())
        .with(Derived.of(everyday.stop_C()), (thermostat, stop) -> thermostat > stop);
  }

  private Detail outOfStep(Pointer subject, double after_min, double most_min) {
    Detail.Builder detail =
        Detail.at(subject, everyday.timed().pointer())
            .observed(Measure.of("starts after the run", after_min, MINUTE))
            .limit(Bound.of("should follow within", most_min, limits.of(Limit.TOP_UP_AFTER_RUN)))
            .basis("heat between the temperatures entered");
    topUp_kWh(everyday.stop_C())
        .ifPresent(heat -> detail.evidence(Measure.of("right after a run", heat, KILOWATT_HOUR)));
    topUp_kWh(everyday.start_C())
        .ifPresent(heat -> detail.evidence(Measure.of("from its start", heat, KILOWATT_HOUR)));
    return detail.done();
  }

  private Optional<Double> topUp_kWh(Entered<Double> from) {
    Derived<Double> volume = Derived.of(setup.tank().volume_L());
    Derived<Double> to = Derived.of(heater.thermostat_C());
    boolean calculable =
        volume.isKnown()
            && to.is(Water.RANGE_C::holds)
            && Derived.of(from).is(Water.RANGE_C::holds);
    return calculable
        ? Optional.of(StoredHeat.heat_kWh(volume.get(), Derived.of(from).get(), to.get()))
        : Optional.empty();
  }

  private void clock() {
    Entered<Double> entered = setup.observed().clockError_min();
    double most_min = limits.value(Limit.CLOCK_ERROR);
    Derived<Double> off = Derived.of(entered).map(Math::abs);
    facts
        .into(ClockError.class, entered.pointer())
        .given(off)
        .makes(
            because ->
                new ClockError(
                    because.explained(() -> astray(entered, off.get(), most_min)),
                    because.quantity(off),
                    most_min));
  }

  private Detail astray(Entered<Double> entered, double off_min, double most_min) {
    return Detail.at(entered)
        .observed(Measure.of("clock error", off_min, MINUTE))
        .limit(Bound.of("maximum clock error", most_min, limits.of(Limit.CLOCK_ERROR)))
        .done();
  }

  /**
   * A tap may be hotter than a sensor that sits low; it cannot be hotter than what heats the tank.
   */
  private void tap() {
    Entered<Double> entered = setup.observed().tap_C();
    Derived<Double> tap = Derived.of(entered);
    TankTop.Reading top =
        new TankTop(setup).against(hottest_C -> tap.is(tap_C -> hottest_C >= tap_C));
    Derived<Double> hottest = orByTimer(top.peak_C());
    facts
        .into(TapReading.class, entered.pointer())
        .given(tap, hottest)
        .foundOnlyWith(top.openIfClear())
        .foundOnlyWith(fedByTimer().provenance().missing())
        .clearOnlyWith(top.openIfFound())
        .makes(
            because ->
                new TapReading(
                    because.explained(() -> hotterThan(entered, tap.get(), hottest.get())),
                    because.quantity(tap),
                    because.quantity(hottest)));
  }

  /** Where a timer feeds the heater, its thermostat alone holds it. */
  private Derived<Double> orByTimer(Derived<Double> peak_C) {
    return fedByTimer().is(is -> is)
        ? peak_C.with(Derived.of(heater.thermostat_C()), Math::max)
        : peak_C;
  }

  private Detail hotterThan(Entered<Double> entered, double tap_C, double hottest_C) {
    return Detail.at(entered)
        .observed(Measure.of("at the tap", tap_C, CELSIUS))
        .limit(
            Bound.calculated(
                "maximum the settings allow", hottest_C, CELSIUS, "settings and tolerances"))
        .basis("the highest setting with the tolerance of its sensor")
        .done();
  }

  private void circulation() {
    Tank tank = setup.tank();
    double most_min = limits.value(Limit.CIRCULATION_RUNS);
    Derived<Double> runs =
        Derived.of(tank.circulationTimes())
            .map(windows -> (double) new ClockWindow(0, 0).sharedWith_min(windows));
    facts
        .into(CirculationTime.class, tank.circulation().pointer())
        .fitted(Derived.notAbsent(tank.part()))
        .given(runs)
        .makes(
            because ->
                new CirculationTime(
                    because.explained(() -> circulates(tank, runs.get(), most_min)),
                    because.quantity(runs),
                    most_min));
  }

  private Detail circulates(Tank tank, double runs_min, double most_min) {
    return Detail.at(tank.circulationTimes(), tank.circulation())
        .observed(Measure.of("circulation runs", runs_min, MINUTE))
        .limit(Bound.of("maximum per day", most_min, limits.of(Limit.CIRCULATION_RUNS)))
        .basis("minutes of the day")
        .done();
  }

  /** What a household draws is a rule of thumb, so it is a question. */
  private void people() {
    Tank tank = setup.tank();
    Derived<Double> people = Derived.of(setup.house().occupants());
    double least_L = limits.value(Limit.STORE_PER_PERSON);
    Derived<Double> each =
        Derived.of(tank.volume_L())
            .with(people, (volume, n) -> LITRE.round(volume / Math.max(1, n)));
    facts
        .into(StorePerPerson.class, tank.volume_L().pointer())
        .given(each)
        .makes(
            because ->
                new StorePerPerson(
                    because.explained(() -> crowded(each.get(), least_L)),
                    because.quantity(each),
                    least_L));
  }

  private Detail crowded(double each_L, double least_L) {
    return Detail.at(setup.tank().volume_L(), setup.house().occupants())
        .observed(Measure.of("volume per person", each_L, LITRE))
        .limit(Bound.of("minimum per person", least_L, limits.of(Limit.STORE_PER_PERSON)))
        .done();
  }
}
