package deadband.topics.disinfection;

import static deadband.setup.Unit.CELSIUS;

import deadband.document.Pointer;
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
import deadband.loop.TankLimit;
import deadband.plant.Dial;
import deadband.plant.DisinfectionDuty;
import deadband.plant.DisinfectionDuty.Worth;
import deadband.plant.EverydayHeat;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.DemandInput;
import deadband.setup.Disinfection;
import deadband.setup.Disinfection.Heater;
import deadband.setup.Entered;
import deadband.setup.Setup;
import deadband.setup.Signal;
import deadband.setup.Site;
import deadband.setup.Unit;
import deadband.trade.DecimalReduction;
import deadband.trade.DisinfectionCycle;
import deadband.trade.DisinfectionCycle.Treatment;
import java.util.ArrayList;
import java.util.List;

/**
 * Facts about the disinfection of the store: does anything do it, by the cycle of the country, and
 * does the call reach the heater that is to do it?
 */
public final class DisinfectionCare {

  private static final double HOTTEST_WATER_C = 100;

  private final Setup setup;
  private final Limits limits;
  private final Facts facts;
  private final Disinfection programme;
  private final DemandInput demand;
  private final DisinfectionDuty duty;
  private final EverydayHeat everyday;

  /**
   * Whether the store is disinfected.
   *
   * @param asked whether this asks for it: a cycle that covers the store, or good practice where
   *     none does
   * @param restsCool whether the store is ever cooler than what needs no disinfection
   */
  public record StoreDisinfection(
      Evidence evidence, Answer asked, Answer restsCool, Answer disinfected) implements Case {}

  /**
   * How long a day the store is heated without surplus.
   *
   * @param askedElsewhere whether another check asks about it
   * @param keptByTimer whether a timer of the immersion heater keeps it above the growth band
   */
  public record EverydayHeating(
      Evidence evidence,
      Answer askedElsewhere,
      Answer keptByTimer,
      Quantity runs_min,
      double least_min)
      implements Case {}

  /** Whether the cycle that is chosen is one for this store in this country. */
  public record ChosenCycle(Evidence evidence, Answer covers) implements Case {}

  /** The temperature a disinfection heats to, against the lowest of the cycle. */
  public record DisinfectionTarget(Evidence evidence, Quantity target_C, Quantity least_C)
      implements Case {}

  /** The time a disinfection holds its target, against the shortest of the cycle. */
  public record DisinfectionHold(Evidence evidence, Quantity hold_min, Quantity least_min)
      implements Case {}

  /** The days from one disinfection to the next, against the most that the cycle allows. */
  public record DisinfectionInterval(Evidence evidence, Quantity every_days, Quantity most_days)
      implements Case {}

  /** Where a control of the immersion heater opens, against the target of the disinfection. */
  public record ElementControl(Evidence evidence, Quantity opens_C, Quantity target_C)
      implements Case {}

  /** Whether the diverter answers the heat pump's demand. */
  public record DemandAnswer(Evidence evidence, Answer fitted, Answer fromHeatPump, Answer heats)
      implements Case {}

  /**
   * Whether the demand input accepts the signal that arrives.
   *
   * @param dangerous whether it is mains, or a disinfection depends on it
   */
  public record DemandSignal(Evidence evidence, Answer dangerous, Answer accepted)
      implements Case {}

  private DisinfectionCare(Setup setup, Limits limits, Facts facts) {
    this.setup = setup;
    this.limits = limits;
    this.duty = new DisinfectionDuty(setup, limits);
    this.everyday = new EverydayHeat(setup, limits);
    this.facts = facts;
    this.programme = setup.heatPump().disinfection();
    this.demand = setup.diverter().demandInput();
  }

  public static void derive(Setup setup, Limits limits, Facts facts) {
    DisinfectionCare topic = new DisinfectionCare(setup, limits, facts);
    topic.disinfected();
    topic.outsideEveryCycle();
    topic.withoutHeatPump();
    topic.keptWarm();
    topic.timerAlone();
    topic.chosenCycle();
    topic.target();
    topic.hold();
    topic.interval();
    topic.diverterOpens();
    topic.thermostatOpens();
    topic.answered();
    topic.signal();
  }

  private void disinfected() {
    Derived<Boolean> runs = duty.runs();
    facts
        .into(StoreDisinfection.class, programme.part().pointer())
        .fitted(duty.heatPumpFitted())
        .given(duty.asked(), duty.restsCool(), runs)
        .makes(
            because ->
                new StoreDisinfection(
                    because.explained(this::undisinfected),
                    because.answer(duty.asked()),
                    because.answer(duty.restsCool()),
                    because.answer(runs)));
  }

  private Detail undisinfected() {
    DisinfectionCycle cycle = duty.cycle().get();
    Treatment asked = cycle.treatments().get(0);
    Derived<Double> start = Derived.of(setup.heatPump().everyday().start_C());
    double short_K = start.isKnown() ? cycle.leastTarget_C() - start.get() : 0;
    Detail.Builder detail = Detail.at(culprits().toArray(new Pointer[0]));
    if (start.isKnown()) {
      detail.observed(Measure.of("lowest store temperature", start.get(), CELSIUS));
    }
    return detail
        .limit(
            DisinfectionDuty.bound(cycle, "temperature to reach", cycle.leastTarget_C(), CELSIUS))
        .size(short_K > 0 ? Size.kelvin(short_K) : Size.WHOLE)
        .evidence(
            Measure.of("held for", asked.hold_min(), Unit.MINUTE),
            Measure.of("at least every", (double) asked.every_days(), "days"))
        .cures(programmes(asked))
        .basis("the national cycle, " + cycle.name())
        .done();
  }

  private List<Pointer> culprits() {
    List<Pointer> culprits = new ArrayList<>(duty.culprits());
    culprits.add(setup.heatPump().everyday().start_C().pointer());
    return culprits;
  }

  /** Where no national cycle speaks of the store, good practice does: a query. */
  private void outsideEveryCycle() {
    Derived<Boolean> outside = Derived.not(duty.asked());
    Derived<Boolean> cool = duty.restsBelow(limits.value(Limit.OUTLET_LEAST));
    Derived<Boolean> kills = duty.worth().map(worth -> worth != Worth.NOTHING);
    facts
        .into(StoreDisinfection.class, programme.enabled().pointer())
        .fitted(duty.heatPumpFitted())
        .given(outside, cool, kills)
        .makes(
            because ->
                new StoreDisinfection(
                    because.explained(
                        () ->
                            neverHot(
                                culprits(),
                                Derived.of(setup.heatPump().everyday().start_C()).get())),
                    because.answer(outside),
                    because.answer(cool),
                    because.answer(kills)));
  }

  /**
   * Without a heat pump no cycle is asked for, but the store must be hot at times. One in the
   * growth band is another check's.
   */
  private void withoutHeatPump() {
    Derived<Double> hottest = everyday.hottestWithoutHeatPump_C();
    double safe_C = limits.value(Limit.DISINFECTION_TEMPERATURE);
    double growth_C = limits.value(Limit.GROWTH_BAND_TOP);
    facts
        .into(StoreDisinfection.class, setup.diverter().limit_C().pointer())
        .fitted(Derived.not(duty.heatPumpFitted()), elementFitted())
        .given(hottest)
        .makes(
            because ->
                new StoreDisinfection(
                    because.explained(
                        () ->
                            neverHot(
                                List.of(
                                    setup.diverter().limit_C().pointer(),
                                    setup.immersion().thermostat_C().pointer()),
                                hottest.get())),
                    because.answer(hottest.map(hot_C -> hot_C > growth_C)),
                    because.answer(hottest.map(hot_C -> hot_C < safe_C)),
                    because.answer(Derived.constant(false))));
  }

  private Detail neverHot(List<Pointer> at, double rest_C) {
    Limits.Entry hot = limits.of(Limit.DISINFECTION_TEMPERATURE);
    return Detail.at(at.toArray(new Pointer[0]))
        .observed(Measure.of("lowest store temperature", rest_C, CELSIUS))
        .limit(Bound.of("temperature to reach", hot.value(), hot).firmIf(false))
        .size(Size.kelvin(hot.value() - rest_C))
        .basis("good practice: no listed law covers this store")
        .done();
  }

  private Derived<Boolean> elementFitted() {
    return Derived.of(setup.immersion().part().isFitted());
  }

  /** A programme that hardly runs keeps nothing warm, whatever its start. */
  private void keptWarm() {
    Derived<Double> runs = everyday.programme_min();
    facts
        .into(EverydayHeating.class, setup.heatPump().everyday().part().pointer())
        .fitted(duty.heatPumpFitted())
        .given(everyday.timerKeepsWarm(), runs)
        .makes(
            because ->
                heating(
                    because,
                    Derived.constant(false),
                    everyday.timerKeepsWarm(),
                    runs,
                    List.of(
                        setup.heatPump().everyday().enabled().pointer(),
                        setup.heatPump().everyday().blocked().pointer(),
                        setup.heatPump().everyday().timed().pointer())));
  }

  /** A timer of minutes is no heater; one without any time is asked about elsewhere. */
  private void timerAlone() {
    Derived<Double> runs = everyday.timer_min();
    facts
        .into(EverydayHeating.class, setup.immersion().timed().pointer())
        .fitted(Derived.not(duty.heatPumpFitted()), elementFitted())
        .given(runs)
        .makes(
            because ->
                heating(
                    because,
                    runs.map(timed_min -> timed_min <= 0),
                    Derived.constant(false),
                    runs,
                    List.of(setup.immersion().timed().pointer())));
  }

  private EverydayHeating heating(
      Facts.Grounds because,
      Derived<Boolean> askedElsewhere,
      Derived<Boolean> keptByTimer,
      Derived<Double> runs_min,
      List<Pointer> at) {
    double least_min = limits.value(Limit.EVERYDAY_HEAT);
    return new EverydayHeating(
        because.explained(() -> hardlyRuns(runs_min.get(), least_min, at)),
        because.answer(askedElsewhere),
        because.answer(keptByTimer),
        because.quantity(runs_min),
        least_min);
  }

  /** That no time at all is too little does not hang on how much is enough. */
  private Detail hardlyRuns(double runs_min, double least_min, List<Pointer> at) {
    Limits.Entry limit = limits.of(Limit.EVERYDAY_HEAT);
    Detail.Builder detail =
        Detail.at(at.toArray(new Pointer[0]))
            .observed(Measure.of("maximum heating time per day", runs_min, Unit.MINUTE))
            .limit(Bound.of("required per day", least_min, limit).firmIf(runs_min == 0))
            .size(Size.time(runs_min, least_min));
    return setup.heatPump().everyday().enabled().says(false)
        ? detail.cure(Change.of(setup.heatPump().everyday().enabled(), true)).done()
        : detail.done();
  }

  private void chosenCycle() {
    Entered<Site.DisinfectionCycle> chosen = setup.site().disinfectionCycle();
    Derived<Boolean> covers = duty.chosenCovers();
    facts
        .into(ChosenCycle.class, chosen.pointer())
        .given(covers)
        .makes(
            because ->
                new ChosenCycle(
                    because.explained(
                        () ->
                            Detail.at(chosen, setup.site().country(), setup.tank().volume_L())
                                .done()),
                    because.answer(covers)));
  }

  /** The programme as it stands switched on; else one with the numbers of the cycle. */
  private List<List<Change>> programmes(Treatment asked) {
    boolean entered = programme.heater().isEntered() && programme.enabled().isEntered();
    if (!entered || !needsOtherHeater()) {
      return programmes(asked, List.of());
    }
    List<List<Change>> cures = new ArrayList<>();
    for (Heater heater : heaters()) {
      cures.addAll(programmes(asked, List.of(Change.of(programme.heater(), heater))));
    }
    return cures;
  }

  /** The heaters that are entered as fitted. */
  private List<Heater> heaters() {
    List<Heater> fitted = new ArrayList<>();
    if (setup.immersion().part().isFitted().says(true)) {
      fitted.add(Heater.IMMERSION);
    }
    if (setup.heatPump().backupHeater().part().isFitted().says(true)) {
      fitted.add(Heater.BACKUP_HEATER);
    }
    if (setup.heatPump().part().isFitted().says(true)) {
      fitted.add(Heater.HEAT_PUMP);
    }
    return fitted;
  }

  private List<List<Change>> programmes(Treatment asked, List<Change> heater) {
    List<Change> on = new ArrayList<>();
    if (!programme.enabled().says(true)) {
      on.add(Change.of(programme.enabled(), true));
    }
    on.addAll(heater);
    List<Change> whole = new ArrayList<>(on);
    whole.add(Change.of(programme.target_C(), asked.target_C()));
    whole.add(Change.of(programme.hold_min(), asked.hold_min()));
    whole.add(Change.of(programme.every_days(), (double) asked.every_days()));
    return List.of(List.copyOf(on), List.copyOf(whole));
  }

  private boolean needsOtherHeater() {
    return programme.heater().says(Heater.NONE) || duty.heaterIsFitted().is(fitted -> !fitted);
  }

  private void target() {
    Derived<Double> target = Derived.of(programme.target_C());
    Derived<DisinfectionCycle> cycle = duty.cycle();
    facts
        .into(DisinfectionTarget.class, programme.target_C().pointer())
        .given(target, cycle)
        .makes(
            because ->
                new DisinfectionTarget(
                    because.explained(() -> tooCool(target.get(), cycle.get())),
                    because.quantity(target),
                    because.quantity(cycle.map(DisinfectionCycle::leastTarget_C))));
  }

  private Detail tooCool(double target_C, DisinfectionCycle cycle) {
    double least_C = cycle.leastTarget_C();
    return Detail.at(programme.target_C())
        .observed(Measure.of("disinfection target", target_C, CELSIUS))
        .limit(DisinfectionDuty.bound(cycle, "minimum target of the cycle", least_C, CELSIUS))
        .size(Size.kelvin(least_C - target_C))
        .cure(Change.of(programme.target_C(), least_C))
        .done();
  }

  private void hold() {
    Derived<Double> hold = Derived.of(programme.hold_min());
    Derived<Double> target = Derived.of(programme.target_C());
    Derived<Double> every = Derived.of(programme.every_days());
    Derived<DisinfectionCycle> cycle = duty.cycle();
    Derived<Double> least =
        cycle.then(asked -> target.with(every, (to, often) -> asked.leastHold_min(to, often)));
    facts
        .into(DisinfectionHold.class, programme.hold_min().pointer())
        .given(hold, least)
        .makes(
            because ->
                new DisinfectionHold(
                    because.explained(() -> tooShort(hold.get(), least.get(), cycle.get())),
                    because.quantity(hold),
                    because.quantity(least)));
  }

  private Detail tooShort(double hold_min, double least_min, DisinfectionCycle cycle) {
    return Detail.at(programme.hold_min(), programme.target_C())
        .observed(Measure.of("hold", hold_min, Unit.MINUTE))
        .limit(DisinfectionDuty.bound(cycle, "minimum hold at that target", least_min, Unit.MINUTE))
        .size(Size.time(hold_min, least_min))
        .evidence(reduction(hold_min))
        .cure(Change.of(programme.hold_min(), least_min))
        .basis("the national cycle; log reduction at the slowest kill rate of any source")
        .done();
  }

  /** A hint at what the hold is worth; never what it is judged by. */
  private Measure reduction(double hold_min) {
    double target_C = programme.target_C().optional().orElse(0.0);
    double log = DecimalReduction.hold_log(Math.min(target_C, HOTTEST_WATER_C), hold_min);
    return Measure.of("log reduction of the hold, counted up to 8", log, "log");
  }

  private void interval() {
    Derived<Double> every = Derived.of(programme.every_days());
    Derived<DisinfectionCycle> cycle = duty.cycle();
    Derived<Double> longest =
        cycle.then(asked -> Derived.of(programme.target_C()).map(asked::longestInterval_days));
    facts
        .into(DisinfectionInterval.class, programme.every_days().pointer())
        .given(every, longest)
        .makes(
            because ->
                new DisinfectionInterval(
                    because.explained(() -> tooRare(every.get(), longest.get(), cycle.get())),
                    because.quantity(every),
                    because.quantity(longest)));
  }

  private Detail tooRare(double every_days, double most_days, DisinfectionCycle cycle) {
    return Detail.at(programme.every_days())
        .observed(Measure.of("interval entered", every_days, Unit.DAY))
        .limit(DisinfectionDuty.bound(cycle, "maximum interval of the cycle", most_days, Unit.DAY))
        .size(Size.time(every_days, most_days))
        .cure(Change.of(programme.every_days(), most_days))
        .done();
  }

  /** Where the side of the hysteresis is not entered, the lower opening is judged. */
  private void diverterOpens() {
    TankLimit limit = new TankLimit(setup);
    Derived<Double> opens = limit.lowestOpening_C();
    Derived<Double> target = Derived.of(programme.target_C());
    boolean sideMatters = !limit.highestOpening_C().is(high -> target.is(to -> high < to));
    facts
        .into(ElementControl.class, setup.diverter().limit_C().pointer())
        .fitted(Derived.of(setup.diverter().part().isFitted()))
        .given(opens, target)
        .foundOnlyWith(sideMatters ? limit.open() : List.of())
        .makes(
            because ->
                new ElementControl(
                    because.explained(() -> diverterCuts(opens.get(), target.get())),
                    because.quantity(opens),
                    because.quantity(target)));
  }

  private Detail diverterCuts(double opens_C, double target_C) {
    Entered<Double> limit = setup.diverter().limit_C();
    return cuts(limit, opens_C, target_C).cure(Change.of(limit, Dial.up_C(target_C))).done();
  }

  private Detail.Builder cuts(Entered<Double> control, double opens_C, double target_C) {
    return Detail.at(control, programme.target_C())
        .observed(Measure.of("opens at", opens_C, CELSIUS))
        .limit(Bound.entered("disinfection target", target_C, CELSIUS, programme.target_C()))
        .size(Size.kelvin(CELSIUS.round(target_C - opens_C)));
  }

  private void thermostatOpens() {
    Entered<Double> thermostat = setup.immersion().thermostat_C();
    Derived<Double> opens = Derived.of(thermostat);
    Derived<Double> target = Derived.of(programme.target_C());
    facts
        .into(ElementControl.class, thermostat.pointer())
        .given(opens, target)
        .makes(
            because ->
                new ElementControl(
                    because.explained(() -> thermostatCuts(opens.get(), target.get())),
                    because.quantity(opens),
                    because.quantity(target)));
  }

  /** The thermostat goes above the diverter's opening too, or it would open first again. */
  private Detail thermostatCuts(double opens_C, double target_C) {
    Derived<Double> diverter = new TankLimit(setup).highestOpening_C();
    double least_C = diverter.isKnown() ? Math.max(target_C, diverter.get() + 0.5) : target_C;
    Entered<Double> thermostat = setup.immersion().thermostat_C();
    return cuts(thermostat, opens_C, target_C)
        .cure(Change.of(thermostat, Dial.up_C(least_C)))
        .cure(Change.of(thermostat, Dial.up_C(target_C)))
        .done();
  }

  private void answered() {
    Derived<Boolean> fitted = Derived.of(demand.part().isFitted());
    Derived<Boolean> fromHeatPump =
        Derived.of(demand.from()).map(from -> from == DemandInput.From.HEAT_PUMP);
    Derived<Boolean> heats =
        Derived.of(demand.action()).map(action -> action != DemandInput.Action.NONE);
    facts
        .into(DemandAnswer.class, demand.part().pointer())
        .given(Derived.all(fitted, fromHeatPump, heats))
        .makes(
            because ->
                new DemandAnswer(
                    because.explained(this::unanswered),
                    because.answer(fitted),
                    because.answer(fromHeatPump),
                    because.answer(heats)));
  }

  private Detail unanswered() {
    Detail.Builder detail =
        Detail.at(unansweredAt(), programme.heater().pointer()).size(duty.missed());
    return demand.action().says(DemandInput.Action.NONE)
        ? detail.cure(Change.of(demand.action(), DemandInput.Action.FULL_POWER)).done()
        : detail.done();
  }

  private Pointer unansweredAt() {
    if (demand.part().isFitted().says(false)) {
      return demand.part().pointer();
    }
    return demand.from().says(DemandInput.From.OTHER)
        ? demand.from().pointer()
        : demand.action().pointer();
  }

  /** A signal that does not fit is dangerous where it is mains, or where disinfection needs it. */
  private void signal() {
    Derived<Signal> arrives = Derived.of(demand.signal());
    Derived<Boolean> dangerous =
        Derived.any(
            arrives.map(signal -> signal == Signal.MAINS),
            Derived.all(
                Derived.notAbsent(setup.heatPump().part()),
                duty.runsOn(Heater.IMMERSION),
                duty.restsCool()));
    Derived<Boolean> accepted = arrives.with(Derived.of(demand.accepts()), Signal::equals);
    facts
        .into(DemandSignal.class, demand.part().pointer())
        .given(dangerous, accepted)
        .makes(
            because ->
                new DemandSignal(
                    because.explained(this::misfits),
                    because.answer(dangerous),
                    because.answer(accepted)));
  }

  private Detail misfits() {
    boolean live = demand.signal().says(Signal.MAINS);
    return Detail.at(demand.signal(), demand.accepts())
        .size(live ? Size.WHOLE : duty.missed())
        .done();
  }
}
