package deadband.topics.grid;

import static deadband.setup.Unit.KILOWATT;

import deadband.document.Pointer;
import deadband.facts.Bound;
import deadband.facts.Detail;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Size;
import deadband.loop.RelayLoop;
import deadband.loop.SensedPhases;
import deadband.provenance.Derived;
import deadband.provenance.Provenance;
import deadband.setup.Phase;
import deadband.setup.Setup;
import deadband.setup.Solar;
import deadband.setup.Supply;
import deadband.setup.Told;
import deadband.setup.Unit;
import java.util.List;
import java.util.Objects;

/** Facts about the phases by name: which of them the PV feeds, and which the heaters are on. */
public final class GridPhases {

  private final Setup setup;
  private final Facts facts;
  private final Solar solar;
  private final RelayLoop loop;
  private final SensedPhases phases;

  private GridPhases(Setup setup, Facts facts) {
    this.setup = setup;
    this.facts = facts;
    this.solar = setup.solar();
    this.loop = new RelayLoop(setup);
    this.phases = new SensedPhases(setup);
  }

  public static void derive(Setup setup, Facts facts) {
    GridPhases topic = new GridPhases(setup, facts);
    topic.elementOnPv();
    topic.heatPumpOnPv();
    topic.supplyPhases();
  }

  private Derived<Boolean> solarFitted() {
    return Derived.of(solar.part().isFitted());
  }

  private Derived<Boolean> billedPerPhase() {
    return Derived.of(setup.supply().billing()).map(billing -> billing == Supply.Billing.PER_PHASE);
  }

  private void elementOnPv() {
    Told<Phase> phase = setup.diverter().phase();
    Derived<Boolean> fed = isFed(phase);
    facts
        .into(FedPhase.class, phase.pointer())
        .fitted(loop.heaterFitted(), solarFitted())
        .where(phases.several(), billedPerPhase())
        .given(fed)
        .makes(
            because ->
                new FedPhase(
                    because.explained(() -> elsewhere(phase, loop.heater_kW())), fed.get()));
  }

  private void heatPumpOnPv() {
    Told<Phase> phase = setup.heatPump().phase();
    Derived<Boolean> fed = isFed(phase);
    facts
        .into(FedPhase.class, phase.pointer())
        .fitted(loop.fitted(), solarFitted())
        .where(
            loop.drivesHeatPump(),
            phases.several(),
            billedPerPhase(),
            phases.drawn().map(drawn -> drawn == 1))
        .given(fed)
        .makes(
            because ->
                new FedPhase(because.explained(() -> elsewhere(phase, loop.draw_kW())), fed.get()));
  }

  /** Whether the PV feeds a phase: all of them, or the one it is entered on. */
  private Derived<Boolean> isFed(Told<Phase> phase) {
    return Derived.any(
        phases.feeding().with(phases.supplied(), (fed, supplied) -> fed >= supplied),
        Derived.of(solar.phase()).with(Derived.of(phase), Phase::equals));
  }

  private Detail elsewhere(Told<Phase> phase, Derived<Double> power_kW) {
    Detail.Builder detail =
        Detail.at(phase, solar.phase(), setup.supply().billing()).basis("phase by phase");
    if (power_kW.isKnown()) {
      detail
          .size(Size.kilowatts(power_kW.get()))
          .evidence(Measure.of("power on a phase without PV", power_kW.get(), KILOWATT));
    }
    return detail.done();
  }

  /** A supply of fewer phases than are in use on it takes every question of phases away. */
  private void supplyPhases() {
    Told<Double> told = setup.supply().phases();
    Derived<Double> supplied = Derived.of(told);
    double used = Math.max(mostDrawn(), named());
    facts
        .into(SupplyPhases.class, told.pointer())
        .given(supplied)
        .makes(
            because ->
                new SupplyPhases(
                    because.explained(() -> more(used, supplied.get())), used, supplied.get()));
  }

  private Detail more(double used, double supplied) {
    return Detail.at(inUse().toArray(new Pointer[0]))
        .observed(Measure.of("phases in use", used, ""))
        .limit(Bound.told("phases of the supply", supplied, Unit.NONE, setup.supply().phases()))
        .done();
  }

  private List<Told<Double>> counts() {
    return List.of(
        solar.phases(),
        setup.heatPump().phases(),
        setup.gridSensor().phases(),
        setup.vehicleCharger().phases());
  }

  private List<Told<Phase>> names() {
    return List.of(
        solar.phase(),
        setup.heatPump().phase(),
        setup.gridSensor().phase(),
        setup.diverter().phase(),
        setup.diverter().demandInput().phase());
  }

  private double mostDrawn() {
    return counts().stream()
        .flatMap(told -> told.optional().stream())
        .mapToDouble(x -> x)
        .max()
        .orElse(0);
  }

  private double named() {
    return names().stream().flatMap(told -> told.optional().stream()).distinct().count();
  }

  private List<Pointer> inUse() {
    double supplied = setup.supply().phases().optional().orElse(0.0);
    List<Pointer> counted =
        counts().stream()
            .filter(told -> told.optional().filter(drawn -> drawn > supplied).isPresent())
            .map(Told::pointer)
            .toList();
    List<Pointer> all =
        counted.isEmpty()
            ? names().stream().filter(Told::isTold).map(Told::pointer).toList()
            : counted;
    return Provenance.union(
        List.of(Objects.requireNonNull(setup.supply().phases().pointer())), all);
  }
}
