package deadband.cases;

import static deadband.setup.Unit.KILOWATT;

import deadband.setup.Change;
import deadband.setup.Relay;
import deadband.setup.Relay.Counts;
import deadband.setup.Setup;
import deadband.setup.Told;
import deadband.setup.Unit;
import deadband.trade.ControlLoop;
import deadband.trade.HuntingCycle;
import deadband.trade.SurplusBand;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Cases about the thresholds and delays of the relay: does the loop stand, and what does it buy?
 */
final class Thresholds {

  private static final String LOOP = "control loop arithmetic";
  private static final double CLOUD_DELAY_MIN = 1;

  private final Setup setup;
  private final Limits limits;
  private final Cases cases;
  private final Relay relay;
  private final RelayLoop loop;

  private Thresholds(Setup setup, Limits limits, Cases cases) {
    this.setup = setup;
    this.limits = limits;
    this.cases = cases;
    this.relay = setup.relay();
    this.loop = new RelayLoop(setup);
  }

  static void derive(Setup setup, Limits limits, Cases cases) {
    Thresholds topic = new Thresholds(setup, limits, cases);
    topic.thresholds();
    topic.gap();
    topic.surplusAtStart();
    topic.stopEdge();
    topic.hiddenHeater();
    topic.startReach();
    topic.gapMargin();
    topic.shortestPhases();
    topic.cloudCost();
    topic.thresholdSize(setup.relay().start_kW());
    topic.thresholdSize(setup.relay().stop_kW());
  }

  private void thresholds() {
    Derived<Double> start = loop.start_kW();
    Derived<Double> stop = loop.stop_kW();
    cases
        .into(RelayThresholds.class, loop.subject())
        .fitted(Derived.of(relay.part().isFitted()))
        .given(start, stop)
        .makes(
            because ->
                new RelayThresholds(
                    because.explained(
                        () ->
                            Detail.at(relay.stop_kW(), relay.start_kW())
                                .observed(Measure.of("stop threshold", stop.get(), KILOWATT))
                                .limit(
                                    Bound.told(
                                        "start threshold", start.get(), KILOWATT, relay.start_kW()))
                                .size(loop.timing().withoutTimers().startsPerHour())
                                .evidence(rates())
                                .cures(new ThresholdCures(setup).candidates())
                                .basis(LOOP)
                                .done()),
                    start.get(),
                    stop.get()));
  }

  /** Relay calls an hour, and compressor starts as its timers let them through. */
  private Measure[] rates() {
    RelayLoop.Timing timing = loop.timing();
    return new Measure[] {
      Measure.of("calls an hour", timing.withoutTimers().startsPerHour(), "1/h"),
      Measure.of("starts an hour", timing.withTimers().startsPerHour(), "1/h")
    };
  }

  private void gap() {
    gap(Derived.constant(true), loop.gap_kW().with(hiddenBelowZero(), (gap, more) -> gap + more));
    heaterAtLimitGap();
  }

  /**
   * What a hidden heater adds to the gap: with a negative stop it gives way to the heat pump before
   * anything is bought, so that its own power must be lost too.
   */
  private Derived<Double> hiddenBelowZero() {
    return Derived.all(loop.heaterHidden(), loop.stop_kW().map(stop -> stop < 0))
        .then(hidden -> hidden ? loop.heater_kW() : Derived.constant(0.0));
  }

  private void gap(Derived<Boolean> reachable, Derived<Double> width) {
    Derived<Double> draw = loop.draw_kW();
    cases
        .into(RelayGap.class, loop.subject())
        .fitted(loop.fitted())
        .where(
            loop.drivesHeatPump(),
            Derived.not(loop.countsHeatPump()),
            loop.stopBelowStart(),
            reachable)
        .given(width, draw)
        .clearOnlyWith(loop.openDraw())
        .makes(
            because ->
                new RelayGap(
                    because.explained(() -> hunts(width.get(), draw.get())),
                    width.get(),
                    draw.get()));
  }

  /** The same loop once the diverter stands at its limit, where a hidden heater no longer helps. */
  private void heaterAtLimitGap() {
    Derived<Boolean> helped = hiddenBelowZero().map(more -> more > 0);
    if (helped.is(is -> is)) {
      gap(loop.startsWithHeaterAtLimit(), loop.gap_kW());
    }
  }

  private Detail hunts(double width_kW, double draw_kW) {
    Told<Double> told =
        setup.heatPump().hotWaterInput_kW().isTold()
            ? setup.heatPump().hotWaterInput_kW()
            : setup.heatPump().minimumInput_kW();
    return Detail.at(relay.stop_kW(), relay.start_kW())
        .observed(Measure.of("gap between start and stop", width_kW, KILOWATT))
        .limit(Bound.told("draw of the heat pump", draw_kW, KILOWATT, told))
        .size(loop.timing().withoutTimers().startsPerHour())
        .evidence(huntingEvidence().toArray(new Measure[0]))
        .cures(new ThresholdCures(setup).candidates())
        .basis(LOOP)
        .done();
  }

  private List<Measure> huntingEvidence() {
    List<Measure> evidence = new ArrayList<>();
    loop.closedForm()
        .ifPresent(
            form -> {
              List<SurplusBand> bands = form.hunting();
              if (!bands.isEmpty()) {
                SurplusBand last = bands.get(bands.size() - 1);
                evidence.add(Measure.of("hunting from", bands.get(0).from_kW(), KILOWATT));
                evidence.add(Measure.of("hunting to", last.to_kW(), KILOWATT));
              }
            });
    evidence.addAll(List.of(rates()));
    HuntingCycle cycle = loop.timing().withTimers();
    evidence.add(Measure.of("run", cycle.run_min(), Unit.MINUTE));
    evidence.add(Measure.of("period", cycle.period_min(), Unit.MINUTE));
    loop.closedForm().ifPresent(form -> addImport(form, evidence));
    startsInARow(cycle).ifPresent(evidence::add);
    return evidence;
  }

  private static void addImport(ControlLoop form, List<Measure> evidence) {
    form.importAtStart_kW()
        .ifPresent(power -> evidence.add(Measure.of("import on starting", power, KILOWATT)));
    evidence.add(Measure.of("import while held", form.importWhileHeld_kW(), KILOWATT));
  }

  /** How many such starts the tank lets come in a row, where its programme and output are told. */
  private Optional<Measure> startsInARow(HuntingCycle cycle) {
    Derived<Double> from = Derived.of(setup.heatPump().everyday().start_C());
    Derived<Double> start = Derived.of(setup.heatPump().surplus().start_C());
    Derived<Double> output = Derived.of(setup.heatPump().hotWaterOutput_kW());
    Derived<Double> heated = new HeatedVolume(setup).aboveCoil_L();
    if (!from.isKnown() || !start.isKnown() || !output.isKnown() || !heated.isKnown()) {
      return Optional.empty();
    }
    double rise_K = cycle.rise_K(output.get(), heated.get(), from.get());
    long starts = HuntingCycle.startsInARow(start.get(), from.get(), rise_K);
    return Optional.of(Measure.of("starts in a row at most", (double) starts, ""));
  }

  private void surplusAtStart() {
    Derived<Double> hidden =
        loop.heaterHidden().then(is -> is ? loop.heater_kW() : Derived.constant(0.0));
    surplusAtStart(Derived.constant(true), Derived.sum(KILOWATT, loop.start_kW(), hidden));
    if (!loop.heaterHidden().is(is -> !is)) {
      surplusAtStart(
          Derived.all(loop.heaterHidden(), loop.startsWithHeaterAtLimit()), loop.start_kW());
    }
  }

  private void surplusAtStart(Derived<Boolean> reachable, Derived<Double> surplus) {
    Derived<Double> draw = loop.leastDraw_kW();
    cases
        .into(SurplusAtStart.class, loop.subject())
        .fitted(loop.fitted())
        .where(loop.drivesHeatPump(), reachable)
        .given(surplus, draw)
        .foundOnlyWith(loop.openLeastDraw())
        .makes(
            because ->
                new SurplusAtStart(
                    because.explained(() -> uncovered(surplus.get(), draw.get())),
                    surplus.get(),
                    draw.get()));
  }

  private Detail uncovered(double surplus_kW, double draw_kW) {
    double short_kW = KILOWATT.round(draw_kW - surplus_kW);
    return Detail.at(relay.start_kW(), setup.heatPump().minimumInput_kW())
        .observed(Measure.of("surplus when the relay closes", surplus_kW, KILOWATT))
        .limit(
            Bound.told(
                "least draw of the heat pump",
                draw_kW,
                KILOWATT,
                setup.heatPump().minimumInput_kW()))
        .size(short_kW)
        .evidence(Measure.of("bought on starting", short_kW, KILOWATT))
        .cure(
            Change.of(
                relay.start_kW(), Dial.up_kW(relay.start_kW().optional().orElse(0.0) + short_kW)))
        .cures(new ThresholdCures(setup).candidates())
        .basis(LOOP)
        .done();
  }

  private void stopEdge() {
    Derived<Double> draw = loop.draw_kW();
    Derived<Double> held =
        loop.countsHeatPump()
            .then(counted -> counted ? draw : Derived.constant(0.0))
            .with(loop.stop_kW(), (seen, stop) -> KILOWATT.round(Math.max(0, seen - stop)));
    Derived<Double> tolerated =
        draw.map(power -> KILOWATT.round(power * limits.value(Limit.IMPORT_SHARE_OF_DRAW)));
    cases
        .into(StopEdge.class, loop.subject())
        .fitted(loop.fitted())
        .where(loop.drivesHeatPump(), loop.stopBelowStart(), held.map(power -> power > 0))
        .given(held, tolerated)
        .makes(
            because ->
                new StopEdge(
                    because.explained(
                        () -> buys(held.get(), atLeastMeterError(tolerated.get(), held))),
                    held.get(),
                    atLeastMeterError(tolerated.get(), held)));
  }

  private double atLeastMeterError(double tolerated_kW, Derived<Double> power) {
    Derived<Double> error = loop.sensorError_kW(power);
    return error.isKnown() ? Math.max(tolerated_kW, error.get()) : tolerated_kW;
  }

  private Detail buys(double import_kW, double tolerated_kW) {
    return Detail.at(relay.stop_kW())
        .observed(Measure.of("bought while the call is held", import_kW, KILOWATT))
        .limit(Bound.of("tolerated", tolerated_kW, limits.of(Limit.IMPORT_SHARE_OF_DRAW), KILOWATT))
        .size(import_kW)
        .evidence(Measure.of("import while held", import_kW, KILOWATT))
        .cures(edgeCures())
        .cures(new ThresholdCures(setup).candidates())
        .basis(LOOP)
        .done();
  }

  /** With the pump not counted a stop of zero buys nothing. */
  private List<List<Change>> edgeCures() {
    return loop.countsHeatPump().is(counted -> !counted)
        ? List.of(List.of(Change.of(relay.stop_kW(), 0.0)))
        : List.of();
  }

  private void hiddenHeater() {
    Derived<Double> heater = loop.heater_kW();
    cases
        .into(HiddenHeater.class, loop.subject())
        .fitted(loop.fitted(), loop.heaterFitted())
        .where(loop.drivesHeatPump(), loop.heaterHidden())
        .given(heater)
        .makes(
            because ->
                new HiddenHeater(because.explained(() -> swallowed(heater.get())), heater.get()));
  }

  private Detail swallowed(double heater_kW) {
    List<Counts> counted = new ArrayList<>(relay.counts().optional().orElse(List.of()));
    counted.add(Counts.IMMERSION);
    return Detail.at(relay.counts(), setup.immersion().power_kW())
        .observed(Measure.of("surplus taken before the relay sees it", heater_kW, KILOWATT))
        .size(heater_kW)
        .evidence(
            Measure.of(
                "surplus at which it closes",
                relay.start_kW().optional().orElse(0.0) + heater_kW,
                KILOWATT))
        .cure(Change.of(relay.counts(), List.copyOf(counted)))
        .basis(LOOP)
        .done();
  }

  private void startReach() {
    Derived<Double> start = loop.start_kW();
    Derived<Double> sun = loop.reach_kW();
    Derived<Double> exported = loop.exportReach_kW();
    Derived<Double> reach = exported.isKnown() ? sun.with(exported, Math::min) : sun;
    cases
        .into(StartReach.class, loop.subject())
        .fitted(loop.fitted(), Derived.of(setup.solar().part().isFitted()))
        .where(loop.drivesHeatPump())
        .given(start, reach)
        .clearOnlyWith(exported.provenance().missing())
        .makes(
            because ->
                new StartReach(
                    because.explained(() -> outOfReach(start.get(), reach.get())),
                    start.get(),
                    reach.get()));
  }

  private Detail outOfReach(double start_kW, double reach_kW) {
    return Detail.at(
            relay.start_kW(),
            setup.solar().peak_kW(),
            setup.solar().inverter_kW(),
            setup.house().baseLoad_kW())
        .observed(Measure.of("start threshold", start_kW, KILOWATT))
        .limit(
            Bound.reckoned(
                "most the relay can ever see",
                reach_kW,
                KILOWATT,
                "sun, inverter and export limit less the house"))
        .size(KILOWATT.round(start_kW - reach_kW))
        .evidence(Measure.of("most the relay can see", reach_kW, KILOWATT))
        .cure(Change.of(relay.start_kW(), Dial.down_kW(reach_kW)))
        .basis(LOOP)
        .done();
  }

  private void gapMargin() {
    Derived<Double> draw = loop.draw_kW();
    Derived<Double> spare = Derived.difference(KILOWATT, loop.gap_kW(), draw);
    Derived<Double> error = loop.sensorError_kW(draw).map(one -> KILOWATT.round(2 * one));
    cases
        .into(GapMargin.class, loop.subject())
        .fitted(loop.fitted(), Derived.of(setup.gridSensor().part().isFitted()))
        .where(
            loop.drivesHeatPump(),
            Derived.not(loop.countsHeatPump()),
            loop.stopBelowStart(),
            spare.map(more -> more > 0))
        .given(spare, error)
        .clearOnlyWith(loop.openDraw())
        .makes(
            because ->
                new GapMargin(
                    because.explained(() -> thin(spare.get(), error.get())),
                    spare.get(),
                    error.get()));
  }

  private Detail thin(double spare_kW, double error_kW) {
    return Detail.at(relay.stop_kW(), relay.start_kW())
        .observed(Measure.of("gap beyond the draw", spare_kW, KILOWATT))
        .limit(
            Bound.reckoned(
                "twice the meter's error at that draw",
                error_kW,
                KILOWATT,
                "IEC 61869-2 accuracy class of the grid sensor"))
        .size(1 - spare_kW / error_kW)
        .cures(new ThresholdCures(setup).candidates())
        .basis(LOOP)
        .done();
  }

  private void shortestPhases() {
    shortestPhase(relay.stopDelay_min(), setup.heatPump().minimumRun_min());
    shortestPhase(relay.startDelay_min(), setup.heatPump().minimumOff_min());
  }

  /** The relay's own delay keeps a phase up, or else the heat pump's timer does. */
  private void shortestPhase(Told<Double> delay, Told<Double> timer) {
    Derived<Double> own = Derived.of(delay);
    Derived<Double> held = own.is(min -> min > 0) ? own : own.with(Derived.of(timer), Math::max);
    cases
        .into(ShortestPhase.class, delay.pointer())
        .fitted(loop.fitted())
        .where(loop.drivesHeatPump())
        .given(held)
        .makes(
            because ->
                new ShortestPhase(
                    because.explained(
                        () ->
                            Detail.at(delay, timer)
                                .observed(Measure.of("held for", held.get(), Unit.MINUTE))
                                .size(loop.timing().withoutTimers().startsPerHour())
                                .cure(Change.of(delay, CLOUD_DELAY_MIN))
                                .done()),
                    held.get()));
  }

  private void cloudCost() {
    Derived<Double> bought =
        loop.draw_kW()
            .with(
                Derived.of(relay.stopDelay_min()),
                (draw_kW, delay_min) ->
                    Unit.KILOWATT_HOUR.round(HuntingCycle.cloudCost_kWh(draw_kW, delay_min, 0)));
    double tolerated = limits.value(Limit.CLOUD_COST);
    cases
        .into(CloudCost.class, relay.stopDelay_min().pointer())
        .fitted(loop.fitted())
        .where(loop.drivesHeatPump())
        .given(bought)
        .clearOnlyWith(loop.openDraw())
        .makes(
            because ->
                new CloudCost(
                    because.explained(() -> lingers(bought.get())), bought.get(), tolerated));
  }

  private Detail lingers(double bought_kWh) {
    Limits.Entry limit = limits.of(Limit.CLOUD_COST);
    double draw_kW = loop.draw_kW().get();
    double delay_min = Math.floor(60 * limit.value() / draw_kW);
    return Detail.at(relay.stopDelay_min())
        .observed(Measure.of("bought in one cloud", bought_kWh, Unit.KILOWATT_HOUR))
        .limit(Bound.of("tolerated in one cloud", limit.value(), limit))
        .size(draw_kW)
        .cure(Change.of(relay.stopDelay_min(), delay_min))
        .basis(LOOP)
        .done();
  }

  private void thresholdSize(Told<Double> threshold) {
    Derived<Double> size = Derived.of(threshold).map(Math::abs);
    double most_kW = limits.value(Limit.THRESHOLD_PLAUSIBLE);
    cases
        .into(ThresholdSize.class, threshold.pointer())
        .fitted(Derived.of(relay.part().isFitted()))
        .given(size)
        .makes(
            because ->
                new ThresholdSize(
                    because.explained(
                        () ->
                            Detail.at(threshold)
                                .observed(Measure.of("threshold", size.get(), KILOWATT))
                                .limit(
                                    Bound.of(
                                        "most a domestic supply carries",
                                        most_kW,
                                        limits.of(Limit.THRESHOLD_PLAUSIBLE)))
                                .size(size.get() / most_kW - 1)
                                .done()),
                    size.get(),
                    most_kW));
  }
}
