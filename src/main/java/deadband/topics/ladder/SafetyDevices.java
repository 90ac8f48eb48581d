package deadband.topics.ladder;

import static deadband.setup.Unit.CELSIUS;
import static deadband.setup.Unit.KELVIN;

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
import deadband.loop.TankLimit;
import deadband.plant.Dial;
import deadband.plant.Programmes;
import deadband.plant.TankTop;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.Entered;
import deadband.setup.Immersion;
import deadband.setup.Setup;
import deadband.setup.Tank;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * Facts about the barriers of each heat source, which must act one after the other: controls,
 * thermostat, cut-out, relief, boiling.
 */
public final class SafetyDevices {

  private static final double THERMOSTAT_CLEAR_K = 2;

  @Says("The tank has a relief valve: one is entered, or the store is unvented.")
  public record TankHasReliefValve(Answer answer) implements Condition {}

  /** Where a cut-out acts, and the highest that is usual. */
  public record CutOutOpening(Evidence evidence, Quantity acts_C, double most_C) implements Case {}

  /** The immersion heater's own thermostat, and the diverter's opening. */
  public record ThermostatOpening(Evidence evidence, Quantity thermostat_C, Quantity opening_C)
      implements Case {}

  /**
   * Two safety devices or controls of one heat source, the first of which must act first.
   *
   * @param inPlace whether the device in question is there, or must be
   */
  public record BarrierPair(Evidence evidence, Answer inPlace, Quantity first_C, Quantity next_C)
      implements Case {}

  /** The opening temperature of the relief valve, and the least it must be. */
  public record ReliefOpening(Evidence evidence, Quantity relief_C, double least_C)
      implements Case {}

  /** How far a cut-out acts above the hottest the tank gets, and how far it should. */
  public record CutOutMargin(Evidence evidence, Answer inPlace, Quantity margin_K, double needed_K)
      implements Case {}

  private final Setup setup;
  private final Tank tank;
  private final Immersion immersion;
  private final Limits limits;
  private final Facts facts;
  private final TankLimit limit;
  private final TankTop top;

  private SafetyDevices(Setup setup, Limits limits, Facts facts) {
    this.setup = setup;
    this.tank = setup.tank();
    this.immersion = setup.immersion();
    this.limits = limits;
    this.facts = facts;
    this.limit = new TankLimit(setup);
    this.top = TankTop.nominal(setup);
  }

  static void derive(Setup setup, Limits limits, Facts facts) {
    SafetyDevices topic = new SafetyDevices(setup, limits, facts);
    facts.add(new TankHasReliefValve(facts.answer(topic.relieved())));
    topic.thermostat();
    topic.elementPairs();
    topic.coilPairs();
    topic.relief();
    topic.margins();
    topic.highest(topic.elementFitted(), topic.elementIsGuarded(), topic.immersion.cutOut_C());
    topic.highest(topic.coilFitted(), topic.coilIsGuarded(), topic.tank.coil().cutOut_C());
  }

  /** What a cut-out acts at, by itself: where no relief valve is behind it, only boiling is. */
  private void highest(Derived<Boolean> fitted, Derived<Boolean> guarded, Entered<Double> cutOut) {
    Derived<Double> acts = Derived.of(cutOut);
    Limits.Entry most = limits.of(Limit.CUT_OUT_HIGHEST);
    facts
        .into(CutOutOpening.class, cutOut.pointer())
        .fitted(fitted, guarded)
        .given(acts)
        .makes(
            because ->
                new CutOutOpening(
                    because.explained(() -> nearBoiling(cutOut, acts.get(), most)),
                    because.quantity(acts),
                    most.value()));
  }

  private Detail nearBoiling(Entered<Double> cutOut, double acts_C, Limits.Entry most) {
    return Detail.at(cutOut, tank.unvented())
        .observed(Measure.of("cut-out acts at", acts_C, CELSIUS))
        .limit(
            Bound.of("maximum cut-out temperature", most.value(), most)
                .firmIf(most.isFirm() && !tank.relief_C().isEntered()))
        .size(Size.kelvin(KELVIN.round(acts_C - most.value())))
        .done();
  }

  private Derived<Boolean> tankFitted() {
    return Derived.notAbsent(tank.part());
  }

  private Derived<Boolean> elementFitted() {
    return Derived.of(immersion.part().isFitted());
  }

  /** A coil that needs a cut-out of its own: one in an unvented store, or one that has it. */
  private Derived<Boolean> coilFitted() {
    return Derived.all(
        tankFitted(),
        Derived.of(tank.coil().part().isFitted()),
        Derived.of(setup.heatPump().part().isFitted()));
  }

  private Derived<Boolean> coilIsGuarded() {
    return lacks(tank.coil().ownCutOut(), tank.coil().cutOut_C())
        ? Derived.of(tank.coil().ownCutOut())
        : coilNeedsCutOut();
  }

  /**
   * A cut-out that is entered as not there stands in no order; its absence is found elsewhere. One
   * with a temperature is there, whatever else is entered.
   */
  private static boolean lacks(Entered<Boolean> ownCutOut, Entered<Double> cutOut_C) {
    return ownCutOut.says(false) && !cutOut_C.isEntered();
  }

  private Derived<Boolean> elementIsGuarded() {
    return lacks(immersion.ownCutOut(), immersion.cutOut_C())
        ? Derived.of(immersion.ownCutOut())
        : Derived.constant(true);
  }

  private Derived<Boolean> coilNeedsCutOut() {
    return Derived.of(tank.coil().cutOut_C()).map(entered -> true).or(Derived.of(tank.unvented()));
  }

  private void thermostat() {
    Derived<Double> thermostat = Derived.of(immersion.thermostat_C());
    boolean surelyFirst =
        thermostat.with(limit.lowestOpening_C(), (own, opening) -> own <= opening).is(is -> is);
    Derived<Double> opening = surelyFirst ? limit.lowestOpening_C() : limit.highestOpening_C();
    facts
        .into(ThermostatOpening.class, immersion.part().pointer())
        .given(thermostat, opening)
        .foundOnlyWith(surelyFirst ? List.of() : limit.open())
        .makes(
            because ->
                new ThermostatOpening(
                    because.explained(() -> opensFirst(thermostat.get(), opening.get())),
                    because.quantity(thermostat),
                    because.quantity(opening)));
  }

  private Detail opensFirst(double thermostat_C, double opening_C) {
    double lift_K = CELSIUS.round(opening_C - limit.limit_C().get());
    Bound opening =
        Bound.entered("diverter opens at", opening_C, CELSIUS, setup.diverter().limit_C());
    return Detail.at(immersion.thermostat_C(), setup.diverter().limit_C())
        .observed(Measure.of("immersion thermostat", thermostat_C, CELSIUS))
        .limit(thermostat_C < opening_C ? opening : opening.brokenByToleranceAlone())
        .size(Size.kilowatts(immersion.power_kW().optional()))
        .evidence(Measure.of("out of reach", KELVIN.round(opening_C - thermostat_C), KELVIN))
        .cure(Change.of(immersion.thermostat_C(), Dial.up_C(opening_C + THERMOSTAT_CLEAR_K)))
        .cure(
            Change.of(
                setup.diverter().limit_C(),
                Dial.down_C(thermostat_C - lift_K - THERMOSTAT_CLEAR_K)))
        .done();
  }

  /**
   * One rung of a chain.
   *
   * @param name what acts there
   * @param acts_C where it acts
   * @param set the values that decide it
   */
  private record Rung(String name, Derived<Double> acts_C, List<Entered<Double>> set) {

    static Rung of(String name, Entered<Double> entered) {
      return new Rung(name, Derived.of(entered), List.of(entered));
    }

    Measure measure() {
      return Measure.of(name, acts_C.get(), CELSIUS);
    }
  }

  private void elementPairs() {
    Rung thermostat = Rung.of("immersion thermostat", immersion.thermostat_C());
    Rung cutOut = Rung.of("immersion cut-out", immersion.cutOut_C());
    pair(elementIsGuarded(), thermostat, cutOut)
        .fitted(elementFitted())
        .makes(
            because ->
                fact(
                    because,
                    elementIsGuarded(),
                    thermostat,
                    cutOut,
                    () -> List.of(List.of(clearOf(cutOut)))));
    beforeRelief(elementFitted(), elementIsGuarded(), cutOut);
  }

  private void coilPairs() {
    Rung controls = controls();
    Rung cutOut = Rung.of("coil cut-out", tank.coil().cutOut_C());
    pair(coilIsGuarded(), controls, cutOut)
        .fitted(coilFitted())
        .clearOnlyWith(Derived.missingOf(stops()))
        .makes(because -> fact(because, coilIsGuarded(), controls, cutOut, List::of));
    beforeRelief(coilFitted(), coilIsGuarded(), cutOut);
  }

  /** The stops of the programmes that heat through the coil. */
  private Rung controls() {
    List<Entered<Double>> entered = new ArrayList<>();
    calledProgrammes().forEach(named -> entered.add(named.programme().stop_C()));
    return new Rung("highest stop of the heat pump", Derived.highestKnown(stops()), entered);
  }

  private List<Derived<Double>> stops() {
    return calledProgrammes().stream()
        .map(named -> Derived.of(named.programme().stop_C()))
        .toList();
  }

  private List<Programmes.Named> calledProgrammes() {
    return new Programmes(setup)
        .all().stream().filter(named -> !named.used().is(used -> !used)).toList();
  }

  /** A cut-out must act before the relief valve; in a store without one, before it boils. */
  private void beforeRelief(Derived<Boolean> fitted, Derived<Boolean> inPlace, Rung cutOut) {
    Rung relief = reliefOrBoiling();
    pair(inPlace, cutOut, relief)
        .fitted(fitted)
        .makes(because -> fact(because, inPlace, cutOut, relief, List::of));
  }

  private Rung reliefOrBoiling() {
    return relieved().is(is -> !is)
        ? new Rung("boiling", relieved().map(is -> boiling_C()), List.of())
        : Rung.of("relief valve", tank.relief_C());
  }

  private double boiling_C() {
    return limits.value(Limit.STORED_WATER);
  }

  /** Whether there is a relief valve: told of it, or the store is unvented; without one, none. */
  private Derived<Boolean> relieved() {
    if (tank.part().isFitted().says(false)) {
      return tankFitted();
    }
    return Derived.of(tank.relief_C()).map(entered -> true).or(Derived.of(tank.unvented()));
  }

  private double reliefLeast_C() {
    return limits.value(Limit.RELIEF_CLASS_A);
  }

  private Facts.Assessment pair(Derived<Boolean> inPlace, Rung first, Rung next) {
    return facts
        .into(BarrierPair.class, first.set().get(0).pointer())
        .given(inPlace, first.acts_C(), next.acts_C());
  }

  private BarrierPair fact(
      Facts.Grounds because,
      Derived<Boolean> inPlace,
      Rung first,
      Rung next,
      Supplier<List<List<Change>>> cures) {
    return new BarrierPair(
        because.explained(() -> outOfOrder(first, next, cures.get())),
        facts.answer(inPlace),
        because.quantity(first.acts_C()),
        because.quantity(next.acts_C()));
  }

  private Detail outOfOrder(Rung first, Rung next, List<List<Change>> cures) {
    List<Entered<?>> at = new ArrayList<>(first.set());
    at.addAll(next.set());
    double over_K = KELVIN.round(first.acts_C().get() - next.acts_C().get());
    return Detail.at(at.toArray(new Entered<?>[0]))
        .observed(first.measure())
        .limit(bound(next))
        .size(Size.kelvin(over_K))
        .evidence(Measure.of("acts too late by", over_K, KELVIN))
        .cures(cures)
        .done();
  }

  private Bound bound(Rung next) {
    return next.set().isEmpty()
        ? Bound.of(next.name(), boiling_C(), limits.of(Limit.STORED_WATER))
        : Bound.entered(next.name(), next.acts_C().get(), CELSIUS, next.set().get(0));
  }

  /** The thermostat set well below its cut-out. */
  private Change clearOf(Rung cutOut) {
    double cutOut_C = cutOut.acts_C().get();
    return Change.of(
        immersion.thermostat_C(), Dial.down_C(cutOut_C - limits.value(Limit.CUT_OUT_MARGIN)));
  }

  private void relief() {
    Rung relief = Rung.of("relief valve", tank.relief_C());
    Rung boiling = new Rung("boiling", Derived.constant(boiling_C()), List.of());
    pair(relieved(), relief, boiling)
        .makes(because -> fact(because, relieved(), relief, boiling, List::of));
    facts
        .into(ReliefOpening.class, tank.part().pointer())
        .fitted(tankFitted())
        .given(relief.acts_C())
        .makes(
            because ->
                new ReliefOpening(
                    because.explained(() -> early(relief)),
                    because.quantity(relief.acts_C()),
                    reliefLeast_C()));
  }

  /** The classes are known from a draft alone. */
  private Detail early(Rung relief) {
    double relief_C = relief.acts_C().get();
    return Detail.at(tank.relief_C())
        .observed(Measure.of("relief valve opens at", relief_C, CELSIUS))
        .limit(
            Bound.of("minimum for class A", reliefLeast_C(), limits.of(Limit.RELIEF_CLASS_A))
                .firmIf(false))
        .size(Size.kelvin(KELVIN.round(reliefLeast_C() - relief_C)))
        .done();
  }

  private void margins() {
    margin(elementFitted(), elementIsGuarded(), immersion.cutOut_C());
    margin(coilFitted(), coilIsGuarded(), tank.coil().cutOut_C());
  }

  private void margin(Derived<Boolean> fitted, Derived<Boolean> inPlace, Entered<Double> cutOut) {
    double needed_K = limits.value(Limit.CUT_OUT_MARGIN);
    Derived<Double> acts = Derived.of(cutOut);
    double most_C = acts.isKnown() ? CELSIUS.round(acts.get() - needed_K) : 0;
    TankTop.Reading reading = top.against(peak_C -> peak_C > most_C);
    Derived<Double> margin = Derived.difference(KELVIN, acts, reading.peak_C());
    facts
        .into(CutOutMargin.class, cutOut.pointer())
        .fitted(fitted)
        .given(inPlace, margin)
        .foundOnlyWith(reading.openIfFound())
        .clearOnlyWith(reading.openIfClear())
        .makes(
            because ->
                new CutOutMargin(
                    because.explained(() -> near(cutOut, margin.get(), reading.peak_C().get())),
                    facts.answer(inPlace),
                    because.quantity(margin),
                    needed_K));
  }

  private Detail near(Entered<Double> cutOut, double margin_K, double peak_C) {
    double needed_K = limits.value(Limit.CUT_OUT_MARGIN);
    double most_C = CELSIUS.round(Derived.of(cutOut).get() - needed_K);
    List<TankTop.Source> culprits = top.culprits(hot_C -> hot_C > most_C);
    List<Entered<?>> at = new ArrayList<>(List.of(cutOut));
    List<Change> lowered = new ArrayList<>();
    for (TankTop.Source culprit : culprits) {
      at.add(culprit.setting());
      lowered.addAll(culprit.loweredTo(most_C));
    }
    return Detail.at(at.toArray(new Entered<?>[0]))
        .observed(Measure.of("cut-out above the maximum tank temperature", margin_K, KELVIN))
        .limit(Bound.of("minimum margin", needed_K, limits.of(Limit.CUT_OUT_MARGIN)))
        .evidence(
            Measure.of("cut-out", Derived.of(cutOut).get(), CELSIUS),
            Measure.of("maximum tank temperature", peak_C, CELSIUS))
        .cures(List.of(List.copyOf(lowered)))
        .done();
  }
}
