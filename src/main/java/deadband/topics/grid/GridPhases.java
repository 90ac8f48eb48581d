package deadband.topics.grid;

import static deadband.setup.Unit.KILOWATT;

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
import deadband.loop.RelayLoop;
import deadband.loop.SensedPhases;
import deadband.provenance.Derived;
import deadband.provenance.Provenance;
import deadband.setup.Entered;
import deadband.setup.Phase;
import deadband.setup.Setup;
import deadband.setup.Solar;
import deadband.setup.Unit;
import java.util.List;
import java.util.Objects;

/** Facts about the phases by name: which of them the PV feeds, and which the heaters are on. */
public final class GridPhases {

  /** Whether a load that takes surplus is on one phase, and whether the PV feeds that phase. */
  public record FedPhase(Evidence evidence, Answer takesSurplus, Answer onOnePhase, Answer fed)
      implements Case {}

  /** Phases in use, against those of the supply. */
  public record SupplyPhases(Evidence evidence, double used, Quantity supplied) implements Case {}

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

  private void elementOnPv() {
    Derived<Boolean> always = Derived.constant(true);
    onPv(setup.diverter().phase(), loop.heaterFitted(), always, always, loop.heater_kW());
  }

  private void heatPumpOnPv() {
    onPv(
        setup.heatPump().phase(),
        loop.fitted(),
        loop.drivesHeatPump(),
        phases.drawn().map(drawn -> drawn == 1),
        loop.draw_kW());
  }

  private void onPv(
      Entered<Phase> phase,
      Derived<Boolean> fitted,
      Derived<Boolean> takesSurplus,
      Derived<Boolean> onOnePhase,
      Derived<Double> power_kW) {
    Derived<Boolean> fed = isFed(phase);
    facts
        .into(FedPhase.class, phase.pointer())
        .fitted(fitted)
        .given(takesSurplus, onOnePhase, fed)
        .makes(
            because ->
                new FedPhase(
                    because.explained(() -> elsewhere(phase, power_kW)),
                    because.answer(takesSurplus),
                    because.answer(onOnePhase),
                    because.answer(fed)));
  }

  /** Whether the PV feeds a phase: all of them, or the one it is entered on. */
  private Derived<Boolean> isFed(Entered<Phase> phase) {
    return Derived.any(
        phases.feeding().with(phases.supplied(), (fed, supplied) -> fed >= supplied),
        Derived.of(solar.phase()).with(Derived.of(phase), Phase::equals));
  }

  private Detail elsewhere(Entered<Phase> phase, Derived<Double> power_kW) {
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
    Entered<Double> entered = setup.supply().phases();
    Derived<Double> supplied = Derived.of(entered);
    double used = Math.max(mostDrawn(), named());
    facts
        .into(SupplyPhases.class, entered.pointer())
        .given(supplied)
        .makes(
            because ->
                new SupplyPhases(
                    because.explained(() -> more(used, supplied.get())),
                    used,
                    because.quantity(supplied)));
  }

  private Detail more(double used, double supplied) {
    return Detail.at(inUse().toArray(new Pointer[0]))
        .observed(Measure.of("phases in use", used, ""))
        .limit(Bound.entered("phases of the supply", supplied, Unit.NONE, setup.supply().phases()))
        .done();
  }

  private List<Entered<Double>> counts() {
    return List.of(
        solar.phases(),
        setup.heatPump().phases(),
        setup.gridSensor().phases(),
        setup.vehicleCharger().phases());
  }

  private List<Entered<Phase>> names() {
    return List.of(
        solar.phase(),
        setup.heatPump().phase(),
        setup.gridSensor().phase(),
        setup.diverter().phase(),
        setup.diverter().demandInput().phase());
  }

  private double mostDrawn() {
    return counts().stream()
        .flatMap(entered -> entered.optional().stream())
        .mapToDouble(x -> x)
        .max()
        .orElse(0);
  }

  private double named() {
    return names().stream().flatMap(entered -> entered.optional().stream()).distinct().count();
  }

  private List<Pointer> inUse() {
    double supplied = setup.supply().phases().optional().orElse(0.0);
    List<Pointer> counted =
        counts().stream()
            .filter(entered -> entered.optional().filter(drawn -> drawn > supplied).isPresent())
            .map(Entered::pointer)
            .toList();
    List<Pointer> all =
        counted.isEmpty()
            ? names().stream().filter(Entered::isEntered).map(Entered::pointer).toList()
            : counted;
    return Provenance.union(
        List.of(Objects.requireNonNull(setup.supply().phases().pointer())), all);
  }
}
