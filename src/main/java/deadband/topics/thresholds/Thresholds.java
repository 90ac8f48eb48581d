package deadband.topics.thresholds;

import static deadband.setup.Unit.KILOWATT;

import deadband.facts.Bound;
import deadband.facts.Detail;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Size;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.loop.ElementLoop;
import deadband.loop.RelayLoop;
import deadband.loop.SensedPhases;
import deadband.plant.Dial;
import deadband.plant.SurplusReach;
import deadband.plant.ThresholdCures;
import deadband.provenance.Derived;
import deadband.provenance.Provenance;
import deadband.setup.Change;
import deadband.setup.Entered;
import deadband.setup.Relay;
import deadband.setup.Relay.Counts;
import deadband.setup.Setup;
import java.util.ArrayList;
import java.util.List;

/** Facts about the thresholds of the relay: does the loop stand, and what does it buy? */
public final class Thresholds {

  private static final String LOOP = "control loop arithmetic";
  private static final double W_PER_KW = 1000;

  private final Setup setup;
  private final Limits limits;
  private final Facts facts;
  private final Relay relay;
  private final RelayLoop loop;
  private final ElementLoop element;
  private final HuntingEvidence evidence;

  private Thresholds(Setup setup, Limits limits, Facts facts) {
    this.setup = setup;
    this.limits = limits;
    this.facts = facts;
    this.relay = setup.relay();
    this.loop = new RelayLoop(setup);
    this.element = new ElementLoop(setup, loop);
    this.evidence = new HuntingEvidence(setup, loop);
  }

  public static void derive(Setup setup, Limits limits, Facts facts) {
    Thresholds topic = new Thresholds(setup, limits, facts);
    topic.thresholds();
    topic.countedPowers();
    topic.gap();
    topic.elementGap();
    topic.surplusAtStart();
    topic.stopEdge();
    topic.hiddenHeater();
    topic.startReach();
    topic.gapMargin();
    topic.thresholdSize(setup.relay().start_kW());
    topic.thresholdSize(setup.relay().stop_kW());
  }

  private void thresholds() {
    Derived<Double> start = loop.start_kW();
    Derived<Double> stop = loop.stop_kW();
    facts
        .into(RelayThresholds.class, loop.subject())
        .given(start, stop)
        .makes(
            because ->
                new RelayThresholds(
                    because.explained(() -> runsFree(start.get(), stop.get())),
                    because.quantity(start),
                    because.quantity(stop)));
  }

  private Detail runsFree(double start_kW, double stop_kW) {
    boolean switchesElement = element.drivesElement().is(does -> does);
    return Detail.at(relay.stop_kW(), relay.start_kW())
        .observed(Measure.of("stop threshold", stop_kW, KILOWATT))
        .limit(Bound.entered("start threshold", start_kW, KILOWATT, relay.start_kW()))
        .size(
            Size.startsPerHour(
                switchesElement ? evidence.callsOnDelays() : evidence.startsPerHour()))
        .evidence(evidence.onDelays(switchesElement ? element.form() : loop.form()))
        .cures(cures(switchesElement).candidates())
        .basis(LOOP)
        .done();
  }

  private ThresholdCures cures(boolean switchesElement) {
    return switchesElement
        ? ThresholdCures.ofElement(setup, element)
        : ThresholdCures.ofHeatPump(setup);
  }

  private void countedPowers() {
    facts
        .into(CountedPowers.class, relay.counts().pointer())
        .makes(because -> new CountedPowers(because.explained(this::blindToTheGrid)));
  }

  private Detail blindToTheGrid() {
    return Detail.at(relay.counts()).cure(counting(Counts.EXPORT)).done();
  }

  private Change counting(Counts power) {
    List<Counts> counted = new ArrayList<>(relay.counts().optional().orElse(List.of()));
    counted.add(power);
    counted.sort(null);
    return Change.of(relay.counts(), List.copyOf(counted));
  }

  /** A gap no wider than the draw hunts. */
  private void gap() {
    Derived<Double> width = loop.gap_kW();
    Derived<Double> draw = loop.seenDraw_kW();
    facts
        .into(RelayGap.class, loop.subject())
        .given(width, draw)
        .clearOnlyWith(loop.openDraw())
        .foundOnlyWith(loop.openSight())
        .makes(
            because ->
                new RelayGap(
                    because.explained(() -> hunts(width.get(), draw.get())),
                    because.quantity(width),
                    because.quantity(draw)));
  }

  private Detail hunts(double width_kW, double draw_kW) {
    return Detail.at(relay.stop_kW(), relay.start_kW())
        .observed(Measure.of("gap between start and stop", width_kW, KILOWATT))
        .limit(drawAsSeen("power input of the heat pump", draw_kW))
        .size(Size.startsPerHour(evidence.startsPerHour()))
        .evidence(evidence.ofHeatPump())
        .cures(ThresholdCures.ofHeatPump(setup).candidates())
        .basis(evidence.basis())
        .done();
  }

  private Bound drawAsSeen(String quantity, double draw_kW) {
    boolean whole = loop.draw_kW().is(all -> all == draw_kW);
    return whole
        ? Bound.entered(quantity, draw_kW, KILOWATT, drawEntered())
        : Bound.calculated(
            quantity, draw_kW, KILOWATT, "its part on the phases the sensor measures");
  }

  private Entered<Double> drawEntered() {
    Entered<Double> most = setup.heatPump().hotWaterInput_kW();
    return most.isEntered() ? most : setup.heatPump().minimumInput_kW();
  }

  private void elementGap() {
    Derived<Double> width = loop.gap_kW();
    Derived<Double> draw = element.draw_kW();
    facts
        .into(ElementGap.class, loop.subject())
        .given(width, draw)
        .makes(
            because ->
                new ElementGap(
                    because.explained(() -> chatters(width.get(), draw.get())),
                    because.quantity(width),
                    because.quantity(draw)));
  }

  private Detail chatters(double width_kW, double draw_kW) {
    return Detail.at(relay.stop_kW(), relay.start_kW())
        .observed(Measure.of("gap between start and stop", width_kW, KILOWATT))
        .limit(
            Bound.calculated(
                "power of the element", draw_kW, KILOWATT, "rated power at the site's voltage"))
        .size(Size.startsPerHour(evidence.callsOnDelays()))
        .evidence(evidence.onDelays(element.form()))
        .cures(ThresholdCures.ofElement(setup, element).candidates())
        .basis(LOOP)
        .done();
  }

  /** The surplus at the start is the start itself, and a heater on top that runs unseen. */
  private void surplusAtStart() {
    Derived<Double> draw = loop.leastDraw_kW();
    Derived<Double> withHeater = Derived.sum(KILOWATT, loop.start_kW(), loop.heater_kW());
    boolean onTop = loop.heaterRunsAtStart().is(runs -> runs) && withHeater.isKnown();
    Derived<Double> surplus = onTop ? withHeater : loop.start_kW();
    Derived<Double> error = meterError_kW(surplus, draw);
    facts
        .into(SurplusAtStart.class, loop.subject())
        .given(surplus, draw, error)
        .foundOnlyWith(loop.openLeastDraw())
        .makes(
            because ->
                new SurplusAtStart(
                    because.explained(() -> uncovered(surplus.get(), draw.get())),
                    because.quantity(Derived.difference(KILOWATT, draw, surplus)),
                    because.quantity(error)));
  }

  /**
   * What the grid sensor cannot tell apart is no waste. Nothing where the one is no less than the
   * other, and where the error is not known.
   */
  private Derived<Double> meterError_kW(Derived<Double> less, Derived<Double> more) {
    boolean matters = less.with(more, (one, other) -> one < other).is(is -> is);
    Derived<Double> error = loop.coarseSensorError_kW(more);
    return matters && error.isKnown() ? error : Derived.constant(0.0);
  }

  private Detail uncovered(double surplus_kW, double draw_kW) {
    double short_kW = KILOWATT.round(draw_kW - surplus_kW);
    double start_kW = relay.start_kW().optional().orElse(0.0);
    return Detail.at(relay.start_kW(), setup.heatPump().minimumInput_kW())
        .observed(Measure.of("surplus when the relay closes", surplus_kW, KILOWATT))
        .limit(
            Bound.entered(
                "minimum power input of the heat pump",
                draw_kW,
                KILOWATT,
                setup.heatPump().minimumInput_kW()))
        .size(Size.kilowatts(short_kW))
        .evidence(Measure.of("import on starting", short_kW, KILOWATT))
        .cure(Change.of(relay.start_kW(), Dial.up_kW(start_kW + short_kW)))
        .cures(ThresholdCures.ofHeatPump(setup).candidates())
        .basis(LOOP)
        .done();
  }

  /** What is bought at the stop edge: below zero as the stop says, or what a counted pump hides. */
  private void stopEdge() {
    Derived<Double> bought = loop.importWhileHeld_kW().map(power -> Math.max(0, power));
    Derived<Double> tolerated = tolerated_kW(bought);
    boolean counted = loop.countsHeatPump().is(is -> is);
    facts
        .into(StopEdge.class, loop.subject())
        .given(bought, tolerated)
        .clearOnlyWith(counted ? loop.openDraw() : List.of())
        .foundOnlyWith(counted ? List.of() : loop.openDraw())
        .makes(
            because ->
                new StopEdge(
                    because.explained(() -> buys(bought.get(), tolerated.get())),
                    because.quantity(bought),
                    because.quantity(tolerated)));
  }

  /** A share of the draw, and the error of the sensor that is to see it. */
  private Derived<Double> tolerated_kW(Derived<Double> bought) {
    double share = limits.value(Limit.IMPORT_SHARE_OF_DRAW);
    return Derived.sum(
        KILOWATT, loop.draw_kW().map(power -> power * share), loop.coarseSensorError_kW(bought));
  }

  private Detail buys(double import_kW, double tolerated_kW) {
    return Detail.at(relay.stop_kW())
        .observed(Measure.of("import while the call is held", import_kW, KILOWATT))
        .limit(mostBought(import_kW, tolerated_kW))
        .size(Size.kilowatts(import_kW))
        .cures(edgeCures())
        .cures(ThresholdCures.ofHeatPump(setup).candidates())
        .basis(LOOP)
        .done();
  }

  /** From half of the draw on the grid gives more than the PV; below it is a matter of taste. */
  private Bound mostBought(double import_kW, double tolerated_kW) {
    double half_kW = KILOWATT.round(loop.draw_kW().get() / 2);
    return import_kW > half_kW
        ? Bound.calculated(
            "half of its power input", half_kW, KILOWATT, "more than the PV gives; arithmetic")
        : Bound.of("tolerated", tolerated_kW, limits.of(Limit.IMPORT_SHARE_OF_DRAW), KILOWATT);
  }

  /** With the pump not counted a stop of zero buys nothing. */
  private List<List<Change>> edgeCures() {
    return loop.countsHeatPump().is(counted -> !counted)
        ? List.of(List.of(Change.of(relay.stop_kW(), 0.0)))
        : List.of();
  }

  private void hiddenHeater() {
    Derived<Double> heater = loop.heater_kW();
    facts
        .into(HiddenHeater.class, loop.subject())
        .given(heater)
        .makes(
            because ->
                new HiddenHeater(
                    because.explained(() -> swallowed(heater.get())), because.quantity(heater)));
  }

  private Detail swallowed(double heater_kW) {
    boolean before = loop.startsBeforeHeater().is(is -> is);
    Derived<Double> closing = loop.start_kW().map(start -> before ? start : start + heater_kW);
    Detail.Builder detail =
        Detail.at(relay.counts(), setup.immersion().power_kW())
            .observed(Measure.of("surplus the element takes first", heater_kW, KILOWATT))
            .size(Size.kilowatts(heater_kW))
            .cures(countedCures())
            .basis(LOOP);
    return closing.isKnown()
        ? detail.evidence(Measure.of("surplus at which it closes", closing.get(), KILOWATT)).done()
        : detail.done();
  }

  /**
   * Counting the heater lowers the surplus at which the relay closes: the start may have to rise.
   */
  private List<List<Change>> countedCures() {
    Change counted = counting(Counts.IMMERSION);
    List<List<Change>> cures = new ArrayList<>();
    cures.add(List.of(counted));
    for (List<Change> thresholds : ThresholdCures.ofHeatPump(setup).thresholds()) {
      List<Change> both = new ArrayList<>(thresholds);
      both.add(0, counted);
      cures.add(List.copyOf(both));
    }
    return cures;
  }

  /** No power counted raises what the PV can give, so that bound holds whatever is counted. */
  private void startReach() {
    SurplusReach sight = new SurplusReach(setup, loop);
    Derived<Double> start = loop.start_kW();
    Derived<Double> reach = sight.most_kW();
    Derived<Double> error = meterError_kW(reach, start);
    facts
        .into(StartReach.class, loop.subject())
        .given(start, reach, error)
        .clearOnlyWith(loop.countsExport().provenance().missing())
        .clearOnlyWith(start.isKnown() ? sight.open(start.get()) : List.of())
        .makes(
            because ->
                new StartReach(
                    because.explained(() -> outOfReach(start.get(), reach.get())),
                    because.quantity(Derived.difference(KILOWATT, start, reach)),
                    because.quantity(error)));
  }

  private Detail outOfReach(double start_kW, double reach_kW) {
    return Detail.at(
            relay.start_kW(),
            setup.solar().peak_kW(),
            setup.solar().inverter_kW(),
            setup.house().baseLoad_kW())
        .observed(Measure.of("start threshold", start_kW, KILOWATT))
        .limit(
            Bound.calculated(
                "maximum the relay can see",
                reach_kW,
                KILOWATT,
                "PV, inverter and export limit less the base load"))
        .size(Size.kilowatts(KILOWATT.round(start_kW - reach_kW)))
        .cures(ThresholdCures.ofHeatPump(setup).withinReach())
        .basis(LOOP)
        .done();
  }

  private void gapMargin() {
    Derived<Double> draw = loop.seenDraw_kW();
    Derived<Double> spare = Derived.difference(KILOWATT, loop.gap_kW(), draw);
    Derived<Double> error = loop.sensorError_kW(draw).map(one -> KILOWATT.round(2 * one));
    facts
        .into(GapMargin.class, loop.subject())
        .given(spare, error)
        .clearOnlyWith(Provenance.union(loop.openDraw(), new SensedPhases(setup).openLoaded()))
        .foundOnlyWith(loop.openSight())
        .makes(
            because ->
                new GapMargin(
                    because.explained(() -> thin(spare.get(), error.get())),
                    because.quantity(draw),
                    because.quantity(spare),
                    because.quantity(error)));
  }

  private Detail thin(double spare_kW, double error_kW) {
    return Detail.at(relay.stop_kW(), relay.start_kW())
        .observed(Measure.of("gap beyond the power input", spare_kW, KILOWATT))
        .limit(
            Bound.calculated(
                "twice the meter error at that power",
                error_kW,
                KILOWATT,
                "IEC 61869-2 accuracy class of the grid sensor"))
        .cures(ThresholdCures.ofHeatPump(setup).candidates())
        .basis(LOOP)
        .done();
  }

  private void thresholdSize(Entered<Double> threshold) {
    Derived<Double> size = Derived.of(threshold).map(Math::abs);
    Limits.Entry limit = limits.of(Limit.THRESHOLD_PLAUSIBLE);
    facts
        .into(ThresholdSize.class, threshold.pointer())
        .given(size)
        .makes(
            because ->
                new ThresholdSize(
                    because.explained(() -> implausible(threshold, size.get(), limit)),
                    because.quantity(size),
                    limit.value()));
  }

  /** The value as it would be had it been written in watts. */
  private static double asWatts_kW(Entered<Double> threshold) {
    return threshold.optional().orElse(0.0) / W_PER_KW;
  }

  private static Detail implausible(Entered<Double> threshold, double size_kW, Limits.Entry limit) {
    return Detail.at(threshold)
        .observed(Measure.of("threshold", size_kW, KILOWATT))
        .limit(Bound.of("maximum of a domestic supply", limit.value(), limit))
        .cure(Change.of(threshold, Dial.nearest_kW(asWatts_kW(threshold))))
        .done();
  }
}
