package deadband.topics.day;

import static deadband.setup.Unit.CELSIUS;
import static deadband.setup.Unit.KILOWATT;
import static deadband.setup.Unit.KILOWATT_HOUR;
import static deadband.setup.Unit.MINUTE;
import static deadband.setup.Unit.NONE;

import deadband.dayrun.CycleRun;
import deadband.dayrun.Result;
import deadband.dayrun.TestDays;
import deadband.days.DayModel;
import deadband.days.DayRuns;
import deadband.document.Pointer;
import deadband.facts.Answer;
import deadband.facts.Bound;
import deadband.facts.Case;
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
import deadband.loop.SensedPhases;
import deadband.loop.TankLimit;
import deadband.plant.ThresholdCures;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.Disinfection;
import deadband.setup.Disinfection.Heater;
import deadband.setup.Diverter;
import deadband.setup.Entered;
import deadband.setup.Relay;
import deadband.setup.Setup;
import deadband.trade.StoredHeat;
import deadband.trade.Water;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Facts about what the settings do in a day: a clear one, a cloudy one, a disinfection cycle. */
public final class DayCases {

  @Says("The heat pump's disinfection is switched on, by a heater that an example day can run.")
  public record DayRunsDisinfection(Answer answer) implements Presence {}

  /** Starts of the compressor in the worst hour of an example day. */
  public record HourlyStarts(Evidence evidence, Quantity starts, Quantity allowed)
      implements Case {}

  /** Share of the runs that only the heat pump's own timer kept going. */
  public record TimerRuns(Evidence evidence, Quantity share, double most) implements Case {}

  /** The shortest run of an example day that was not cut off by its end. */
  public record ShortRuns(Evidence evidence, Quantity shortest_min, Quantity minimum_min)
      implements Case {}

  /** What surplus calls of a clear day take from the grid. */
  public record SurplusImport(Evidence evidence, Quantity import_kWh, Quantity tolerated_kWh)
      implements Case {}

  /** PV energy of a clear day that the tank still had room for. */
  public record SunLost(Evidence evidence, Quantity lost_kWh, double tolerated_kWh)
      implements Case {}

  /** Whether the element has heated the tank by the time the relay calls, through the seasons. */
  public record HeaterFirst(
      Evidence evidence,
      Answer exportPaid,
      Answer relayCloses,
      Answer heatPumpRuns,
      Quantity coolest_C,
      Quantity start_C)
      implements Case {}

  /** Whether the relay closes on any day of the seasons. */
  public record StartInYear(Evidence evidence, Answer reached) implements Case {}

  /** Whether a call starts the heat pump on any day of the seasons, and how cool the tank was. */
  public record CallInYear(Evidence evidence, Answer met, Quantity coolest_C, Quantity start_C)
      implements Case {}

  /** Export that a diverter sees where the export is limited, against what it needs. */
  public record DivertedExport(
      Evidence evidence, Answer allPhasesMeasured, Quantity seen_kW, Quantity needed_kW)
      implements Case {}

  /** What a clear day's element took from the grid, and from PV. */
  public record DivertedEnergy(Evidence evidence, Quantity bought_kWh, Quantity fromPv_kWh)
      implements Case {}

  /** Time of a day in which the tank stands at 20 to 45 °C. */
  public record GrowthBandTime(
      Evidence evidence, Answer disinfected, Quantity time_min, double most_min) implements Case {}

  /** Whether a disinfection cycle, run by itself, holds its target. */
  public record CycleHold(Evidence evidence, Answer held) implements Case {}

  /** Share of the store that such a cycle holds at its target. */
  public record CycleShare(
      Evidence evidence, Answer held, Answer mixed, Quantity share, double least) implements Case {}

  private static final String BASIS = "day run, minute by minute";
  private static final String SEASONS =
      "day run, minute by minute: a dull, a broken and a clear day for each month";
  private static final double HOURS_PER_DAY = 24;

  /** Heaters that the day run can send through a cycle without sun. */
  private static final Set<Heater> CARRIED_BY =
      Set.of(Heater.IMMERSION, Heater.HEAT_PUMP, Heater.BACKUP_HEATER);

  private final Setup setup;
  private final Limits limits;
  private final Facts facts;
  private final Relay relay;
  private final Derived<Optional<TestDays>> days;

  private DayCases(Setup setup, Limits limits, DayRuns runs, Facts facts) {
    this.setup = setup;
    this.limits = limits;
    this.facts = facts;
    this.relay = setup.relay();
    this.days = DayModel.of(setup).map(runs::of);
  }

  public static void derive(Setup setup, Limits limits, DayRuns runs, Facts facts) {
    DayCases topic = new DayCases(setup, limits, runs, facts);
    topic.hourlyStarts();
    topic.timerRuns();
    topic.shortRuns();
    topic.surplusImport();
    topic.sunLost();
    topic.heaterFirst();
    topic.startInYear();
    topic.callInYear();
    topic.divertedExport();
    topic.divertedEnergy();
    topic.growthBandTime();
    topic.cycle();
  }

  private Facts.Assessment into(Class<? extends Case> type, Pointer subject) {
    return facts.into(type, subject).onDays(days);
  }

  /** What the days come to, open where they were not wanted. */
  private <T> Derived<T> onDays(Function<TestDays, T> result) {
    return days.then(ran -> ran.map(result).map(Derived::constant).orElseGet(Derived::leftOut));
  }

  private TestDays ran() {
    return days.get().orElseThrow();
  }

  /** The greater of what a clear and a cloudy day come to. */
  private double worse(ToDoubleFunction<Result> quantity) {
    return Math.max(quantity.applyAsDouble(ran().clear()), quantity.applyAsDouble(ran().cloud()));
  }

  private static Result.Cycles cycles(Result result) {
    return result.cycles().orElseThrow();
  }

  /** Starts with the heat pump's own timers in force; without a plate, what is taken for one. */
  private void hourlyStarts() {
    Entered<Double> plate = setup.heatPump().startsPerHour();
    Limits.Entry usual = limits.of(Limit.STARTS_PER_HOUR);
    Derived<Double> allowed =
        Derived.of(plate).or(Derived.assumed(plate.pointer(), usual.value(), usual.source()));
    into(HourlyStarts.class, relay.part().pointer())
        .given(allowed)
        .makes(
            because ->
                new HourlyStarts(
                    because.explained(() -> starts(startsInWorstHour(), plate, allowed.get())),
                    because.quantity(onDays(ran -> startsInWorstHour())),
                    because.quantity(allowed)));
  }

  private double startsInWorstHour() {
    return worse(result -> cycles(result).startsInWorstHour());
  }

  private Detail starts(double starts, Entered<Double> plate, double allowed) {
    double closures = worse(result -> cycles(result).closingsInWorstHour());
    return Detail.at(relay.stop_kW(), relay.start_kW(), plate)
        .observed(Measure.of("starts in the worst hour", starts, NONE))
        .evidence(Measure.of("relay closures in the worst hour", closures, NONE))
        .limit(
            plate.isEntered()
                ? Bound.entered("starts per hour on the plate", allowed, NONE, plate)
                : Bound.of("starts per hour", allowed, limits.of(Limit.STARTS_PER_HOUR)))
        .size(Size.startsPerHour(starts))
        .cures(ThresholdCures.ofHeatPump(setup).candidates())
        .basis(BASIS)
        .done();
  }

  private void timerRuns() {
    double most = limits.value(Limit.TIMER_RUNS_SHARE);
    into(TimerRuns.class, setup.heatPump().minimumRun_min().pointer())
        .makes(
            because ->
                new TimerRuns(
                    because.explained(() -> keptGoing(timerShare())),
                    because.quantity(onDays(ran -> timerShare())),
                    most));
  }

  /** Of the runs of both days; 0 where there are none. */
  private double timerShare() {
    double starts = sum(Result.Cycles::heatPumpStarts);
    return starts == 0 ? 0 : NONE.round(sum(Result.Cycles::runsEndedByTimer) / starts);
  }

  private double sum(ToDoubleFunction<Result.Cycles> count) {
    return count.applyAsDouble(cycles(ran().clear())) + count.applyAsDouble(cycles(ran().cloud()));
  }

  private Detail keptGoing(double share) {
    return Detail.at(relay.stop_kW(), relay.start_kW(), setup.heatPump().minimumRun_min())
        .observed(Measure.of("runs extended by the timer", 100 * share, "%"))
        .limit(Bound.share("permitted share of the runs", limits.of(Limit.TIMER_RUNS_SHARE)))
        .size(Size.startsPerHour(worse(result -> cycles(result).startsInWorstHour())))
        .cures(ThresholdCures.ofHeatPump(setup).candidates())
        .basis(BASIS)
        .done();
  }

  /** Runs that a programme or a limit ends before the heat pump's own minimum run. */
  private void shortRuns() {
    Derived<Double> minimum_min = Derived.of(setup.heatPump().minimumRun_min());
    into(ShortRuns.class, setup.heatPump().minimumRun_min().pointer())
        .given(minimum_min)
        .makes(
            because ->
                new ShortRuns(
                    because.explained(() -> endedEarly(shortest_min(ran()), minimum_min.get())),
                    because.quantity(onDays(DayCases::shortest_min)),
                    because.quantity(minimum_min)));
  }

  private static double shortest_min(TestDays ran) {
    return Math.min(shortest_min(ran.clear()), shortest_min(ran.cloud()));
  }

  /** Where nothing ran to its end, no run was short. */
  private static double shortest_min(Result day) {
    return cycles(day).shortestRun_min().orElse(Double.POSITIVE_INFINITY);
  }

  private Detail endedEarly(double shortest_min, double minimum_min) {
    return Detail.at(
            setup.heatPump().surplus().stop_C(),
            setup.heatPump().everyday().stop_C(),
            setup.heatPump().minimumRun_min())
        .observed(Measure.of("shortest run", shortest_min, MINUTE))
        .limit(minimumRun(minimum_min))
        .size(Size.startsPerHour(worse(result -> cycles(result).startsInWorstHour())))
        .basis(BASIS)
        .done();
  }

  private Bound minimumRun(double minimum_min) {
    Entered<Double> plate = setup.heatPump().minimumRun_min();
    return plate.isEntered()
        ? Bound.entered("minimum run", minimum_min, MINUTE, plate)
        : Bound.assumed("minimum run", minimum_min, MINUTE, plate.pointer().dotted());
  }

  private void surplusImport() {
    into(SurplusImport.class, relay.part().pointer())
        .makes(
            because ->
                new SurplusImport(
                    because.explained(() -> bought(ran().clear())),
                    because.quantity(onDays(ran -> bought_kWh(ran.clear()))),
                    because.quantity(onDays(ran -> tolerated_kWh(ran.clear())))));
  }

  private static double bought_kWh(Result day) {
    return tenth(day.importWhileOnSurplus_kWh());
  }

  /** What one cloud may cost, or a share of what the compressor took where that is more. */
  private double tolerated_kWh(Result day) {
    double share_kWh = limits.value(Limit.IMPORT_SHARE_OF_DRAW) * day.heatPumpOnSurplus_kWh();
    return tenth(Math.max(limits.value(Limit.CLOUD_COST), share_kWh));
  }

  private Detail bought(Result day) {
    double bought_kWh = bought_kWh(day);
    double tolerated_kWh = tolerated_kWh(day);
    Limit by =
        tolerated_kWh > limits.value(Limit.CLOUD_COST)
            ? Limit.IMPORT_SHARE_OF_DRAW
            : Limit.CLOUD_COST;
    double draw_kW = setup.heatPump().hotWaterInput_kW().optional().orElse(0.0);
    return Detail.at(relay.start_kW(), relay.stop_kW())
        .observed(Measure.of("import on surplus calls on a clear day", bought_kWh, KILOWATT_HOUR))
        .limit(Bound.of("tolerated", tolerated_kWh, limits.of(by), KILOWATT_HOUR))
        .size(Size.kilowatts(draw_kW * Math.min(1, bought_kWh / day.heatPumpOnSurplus_kWh())))
        .evidence(
            Measure.of(
                "input on surplus calls on a clear day",
                day.heatPumpOnSurplus_kWh(),
                KILOWATT_HOUR))
        .cures(ThresholdCures.ofHeatPump(setup).candidates())
        .basis(BASIS)
        .done();
  }

  /** Energies of a day are compared as they are shown. */
  private static double tenth(double energy_kWh) {
    return Math.rint(10 * energy_kWh) / 10;
  }

  /** What was exported or held back, as far as the tank still had room for it. */
  private void sunLost() {
    double tolerated_kWh = limits.value(Limit.SUN_LOST);
    Derived<Double> aim_C = aim_C();
    Derived<Double> volume_L = Derived.of(setup.tank().volume_L());
    into(SunLost.class, relay.part().pointer())
        .given(aim_C, volume_L)
        .makes(
            because -> {
              Derived<Double> lost_kWh = lost_kWh(volume_L, aim_C);
              return new SunLost(
                  because.explained(() -> lost(lost_kWh.get(), tolerated_kWh, aim_C.get())),
                  because.quantity(lost_kWh),
                  tolerated_kWh);
            });
  }

  private Derived<Double> lost_kWh(Derived<Double> volume_L, Derived<Double> aim_C) {
    return onDays(TestDays::clear)
        .then(
            clear ->
                volume_L.with(
                    aim_C,
                    (volume, aim) ->
                        tenth(
                            Math.min(
                                room_kWh(clear, volume, aim),
                                clear.export_kWh() + clear.curtailed_kWh()))));
  }

  /** The highest temperature to which sun may heat the tank; above boiling nothing does. */
  private Derived<Double> aim_C() {
    Derived<Double> stop_C = Derived.of(setup.heatPump().surplus().stop_C());
    return DayModel.isThere(setup.diverter().part().isFitted())
        .then(
            there ->
                there ? stop_C.with(new TankLimit(setup).lowestOpening_C(), Math::max) : stop_C)
        .map(Water.RANGE_C::clamp);
  }

  private static double room_kWh(Result clear, double volume_L, double aim_C) {
    double warmest_C = clear.tankSensor_C().max();
    return warmest_C < aim_C ? StoredHeat.heat_kWh(volume_L, warmest_C, aim_C) : 0;
  }

  private Detail lost(double lost_kWh, double tolerated_kWh, double aim_C) {
    Result clear = ran().clear();
    return Detail.at(relay.start_kW(), setup.diverter().limit_C())
        .observed(Measure.of("PV energy the tank could have stored", lost_kWh, KILOWATT_HOUR))
        .limit(Bound.of("tolerated", tolerated_kWh, limits.of(Limit.SUN_LOST)))
        .size(Size.kilowatts(lost_kWh / HOURS_PER_DAY))
        .evidence(
            Measure.of("exported on a clear day", clear.export_kWh(), KILOWATT_HOUR),
            Measure.of("curtailed on a clear day", clear.curtailed_kWh(), KILOWATT_HOUR),
            Measure.of("maximum at the tank sensor", clear.tankSensor_C().max(), CELSIUS),
            Measure.of("highest set point", aim_C, CELSIUS))
        .basis(BASIS)
        .done();
  }

  /** The relay closes, and on every day of the seasons the tank is too warm by then. */
  private void heaterFirst() {
    facts
        .into(HeaterFirst.class, setup.immersion().part().pointer())
        .onDays(days)
        .makes(
            because ->
                new HeaterFirst(
                    because.explained(this::filledFirst),
                    because.answer(Derived.of(setup.supply().exportPaid())),
                    because.answer(onDays(ran -> ran.year().relayCloses())),
                    because.answer(onDays(ran -> ran.year().heatPumpRuns())),
                    because.quantity(onDays(DayCases::coolestWhenCalled_C)),
                    because.quantity(surplusStart_C())));
  }

  private static double coolestWhenCalled_C(TestDays ran) {
    return ran.year().result().coolestWhenCalled_C();
  }

  private Derived<Double> surplusStart_C() {
    return Derived.of(setup.heatPump().surplus().start_C());
  }

  private Detail filledFirst() {
    Result clear = ran().clear();
    return Detail.at(setup.heatPump().surplus().start_C(), relay.start_kW())
        .size(Size.kilowatts(clear.immersion_kWh() / HOURS_PER_DAY))
        .evidence(
            Measure.of("into the element on a clear day", clear.immersion_kWh(), KILOWATT_HOUR),
            Measure.of("exported on a clear day", clear.export_kWh(), KILOWATT_HOUR),
            coolestWhenCalled(),
            seasons())
        .basis(SEASONS)
        .done();
  }

  private Measure coolestWhenCalled() {
    return Measure.of(
        "lowest tank temperature during a call",
        ran().year().result().coolestWhenCalled_C(),
        CELSIUS);
  }

  private Measure seasons() {
    return Measure.of("days simulated", ran().year().days(), NONE);
  }

  private void startInYear() {
    into(StartInYear.class, relay.start_kW().pointer())
        .makes(
            because ->
                new StartInYear(
                    because.explained(this::neverReached),
                    because.answer(onDays(ran -> ran.year().relayCloses()))));
  }

  private Detail neverReached() {
    double most_kW = ran().year().result().mostCounted_kW();
    double start_kW = relay.start_kW().optional().orElse(0.0);
    return Detail.at(relay.start_kW(), setup.solar().peak_kW())
        .observed(Measure.of("maximum counted in a minute", most_kW, KILOWATT))
        .limit(Bound.entered("relay start", start_kW, KILOWATT, relay.start_kW()))
        .size(Size.kilowatts(setup.heatPump().hotWaterInput_kW().optional()))
        .evidence(
            seasons(),
            Measure.of(
                "curtailed on these days", ran().year().result().curtailed_kWh(), KILOWATT_HOUR))
        .basis(SEASONS)
        .done();
  }

  /** A call that comes while the tank is cool enough, and starts nothing. */
  private void callInYear() {
    into(CallInYear.class, setup.heatPump().surplusInput().part().pointer())
        .given(surplusStart_C())
        .makes(
            because ->
                new CallInYear(
                    because.explained(this::startsNothing),
                    because.answer(onDays(ran -> ran.year().heatPumpRuns())),
                    because.quantity(onDays(DayCases::coolestWhenCalled_C)),
                    because.quantity(surplusStart_C())));
  }

  private Detail startsNothing() {
    return Detail.at(
            setup.heatPump().surplus().part().pointer(),
            setup.heatPump().surplusInput().part().pointer())
        .observed(coolestWhenCalled())
        .limit(
            Bound.entered(
                "surplus start",
                surplusStart_C().get(),
                CELSIUS,
                setup.heatPump().surplus().start_C()))
        .size(Size.kilowatts(setup.heatPump().hotWaterInput_kW().optional()))
        .evidence(seasons())
        .basis(SEASONS)
        .done();
  }

  /** A diverter is there to use PV: one that feeds more bought than PV energy does the reverse. */
  private void divertedEnergy() {
    facts
        .into(DivertedEnergy.class, setup.diverter().part().pointer())
        .onDays(days)
        .makes(
            because ->
                new DivertedEnergy(
                    because.explained(
                        () ->
                            boughtByDiverter(divertedBought_kWh(ran()), divertedFromPv_kWh(ran()))),
                    because.quantity(onDays(DayCases::divertedBought_kWh)),
                    because.quantity(onDays(DayCases::divertedFromPv_kWh))));
  }

  private static double divertedBought_kWh(TestDays ran) {
    return tenth(ran.clear().divertedBought_kWh());
  }

  private static double divertedFromPv_kWh(TestDays ran) {
    return tenth(ran.clear().diverted_kWh() - ran.clear().divertedBought_kWh());
  }

  private Detail boughtByDiverter(double bought_kWh, double rest_kWh) {
    return Detail.at(
            setup.diverter().exportMargin_kW(),
            setup.diverter().phase(),
            setup.solar().phase(),
            setup.supply().billing())
        .observed(Measure.of("import for the element on a clear day", bought_kWh, KILOWATT_HOUR))
        .size(Size.kilowatts(bought_kWh / HOURS_PER_DAY))
        .evidence(
            Measure.of("PV energy into the element on a clear day", rest_kWh, KILOWATT_HOUR),
            Measure.of("exported on a clear day", ran().clear().export_kWh(), KILOWATT_HOUR))
        .basis(BASIS)
        .done();
  }

  /** A diverter regulates on export: an export limit at or below what it needs stops it. */
  private void divertedExport() {
    Diverter diverter = setup.diverter();
    Derived<Double> seen_kW =
        Derived.of(setup.solar().exportLimit_kW())
            .with(
                Derived.of(diverter.exportMargin_kW()),
                (limit, margin) -> KILOWATT.round(limit - margin));
    Derived<Double> needed_kW = Derived.of(diverter.minimum_kW());
    facts
        .into(DivertedExport.class, setup.solar().exportLimit_kW().pointer())
        .given(seen_kW, needed_kW)
        .makes(
            because ->
                new DivertedExport(
                    because.explained(() -> seesNothing(seen_kW.get(), needed_kW.get())),
                    because.answer(new SensedPhases(setup).measuresAll()),
                    because.quantity(seen_kW),
                    because.quantity(needed_kW)));
  }

  private Detail seesNothing(double seen_kW, double needed_kW) {
    return Detail.at(setup.solar().exportLimit_kW(), setup.diverter().exportMargin_kW())
        .observed(Measure.of("export above its margin", seen_kW, KILOWATT))
        .limit(
            Bound.entered(
                "minimum power it feeds", needed_kW, KILOWATT, setup.diverter().minimum_kW()))
        .size(Size.kilowatts(setup.immersion().power_kW().optional().orElse(needed_kW)))
        .done();
  }

  private void growthBandTime() {
    Disinfection programme = setup.heatPump().disinfection();
    double most_min = limits.value(Limit.GROWTH_BAND_TIME);
    facts
        .into(GrowthBandTime.class, setup.heatPump().everyday().part().pointer())
        .onDays(days)
        .makes(
            because ->
                new GrowthBandTime(
                    because.explained(() -> tepid(worse(Result::minutes20to45), most_min)),
                    because.answer(Derived.of(programme.enabled())),
                    because.quantity(onDays(ran -> worse(Result::minutes20to45))),
                    most_min));
  }

  /** Let the programme that is described run; the household's temperatures are its own. */
  private Detail tepid(double time_min, double most_min) {
    Disinfection programme = setup.heatPump().disinfection();
    boolean described = programme.target_C().isEntered() && programme.heater().isEntered();
    return Detail.at(setup.heatPump().everyday().start_C(), programme.enabled())
        .cures(described ? List.of(List.of(Change.of(programme.enabled(), true))) : List.of())
        .observed(Measure.of("time at 20 to 45 °C in a day", time_min, MINUTE))
        .limit(Bound.of("permitted time", most_min, limits.of(Limit.GROWTH_BAND_TIME)))
        .basis(BASIS)
        .done();
  }

  private Derived<Boolean> runsDisinfection() {
    Disinfection programme = setup.heatPump().disinfection();
    return Derived.all(
        Derived.of(programme.enabled()), Derived.of(programme.heater()).map(CARRIED_BY::contains));
  }

  private void cycle() {
    Disinfection programme = setup.heatPump().disinfection();
    facts.add(new DayRunsDisinfection(facts.answer(runsDisinfection())));
    Derived<CycleRun> run = onDays(TestDays::cycle).then(DayCases::known);
    into(CycleHold.class, programme.part().pointer())
        .makes(
            because ->
                new CycleHold(
                    because.explained(this::neverHeld), because.answer(run.map(CycleRun::held))));
    double least = limits.value(Limit.CYCLE_SHARE);
    Derived<Double> share = run.map(cycle -> NONE.round(cycle.heldShare()));
    into(CycleShare.class, programme.part().pointer())
        .makes(
            because ->
                new CycleShare(
                    because.explained(() -> untreated(share.get(), least)),
                    because.answer(run.map(CycleRun::held)),
                    because.answer(Derived.of(programme.mixesStore())),
                    because.quantity(share),
                    least));
  }

  /** Where it is not run, what it holds is open, not settled. */
  private static Derived<CycleRun> known(Optional<CycleRun> run) {
    return run.map(Derived::constant).orElseGet(Derived::leftOut);
  }

  private CycleRun cycleRun() {
    return ran().cycle().orElseThrow();
  }

  private Detail neverHeld() {
    Disinfection programme = setup.heatPump().disinfection();
    return ofCycle(
            Detail.at(programme.target_C(), programme.hold_min(), programme.timeAllowed_min()))
        .observed(Measure.of("maximum at the top", cycleRun().result().tankTop_C().max(), CELSIUS))
        .done();
  }

  private Detail untreated(double share, double least) {
    Disinfection programme = setup.heatPump().disinfection();
    return ofCycle(Detail.at(programme.heater(), programme.sensor_mm()))
        .observed(Measure.of("share of the store held at the target", 100 * share, "%"))
        .limit(Bound.share("share required", limits.of(Limit.CYCLE_SHARE)))
        .size(Size.share(1 - share / least))
        .done();
  }

  private Detail.Builder ofCycle(Detail.Builder detail) {
    Result result = cycleRun().result();
    return detail
        .evidence(
            Measure.of("log reduction at the top", result.logReductionTop(), ""),
            Measure.of("log reduction at the bottom", result.logReductionBottom(), ""),
            Measure.of("maximum at the bottom", result.tankBottom_C().max(), CELSIUS))
        .basis("day run, minute by minute: a disinfection cycle by itself");
  }
}
