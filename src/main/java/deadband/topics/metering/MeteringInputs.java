package deadband.topics.metering;

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
import deadband.setup.Change;
import deadband.setup.CurrentSensor;
import deadband.setup.CurrentSensor.Assigned;
import deadband.setup.Entered;
import deadband.setup.GridSensor;
import deadband.setup.LinkedController;
import deadband.setup.LinkedController.Role;
import deadband.setup.Part;
import deadband.setup.Phase;
import deadband.setup.Setup;
import deadband.setup.Unit;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Facts about the sensors that surplus is calculated from, and about controllers linked together.
 */
public final class MeteringInputs {

  /** One input for a current sensor: is anything on it, and is it assigned to anything? */
  public record UnusedSensorInput(Evidence evidence, Answer sensorFitted, Answer assigned)
      implements Case {}

  /** Whether anything measures the grid. */
  public record GridSensing(Evidence evidence, Answer sensed) implements Case {}

  /**
   * The phase that the grid sensor measures, and the phase of what it is to see.
   *
   * @param onOneOfSeveral whether the sensor and what it is to see are on one phase of several
   * @param explained whether another phase explains it already
   */
  public record SensorPhase(Evidence evidence, Answer onOneOfSeveral, Answer explained, Answer same)
      implements Case {}

  /** Highest current on a phase, and the rated current of the grid sensor. */
  public record SensorCurrent(Evidence evidence, Quantity current_A, Quantity rated_A)
      implements Case {}

  /** Whether it was checked which way round the grid sensor is. */
  public record SensorFacing(Evidence evidence, Answer checked) implements Case {}

  /** How many of a group of linked controllers lead. */
  public record LinkedGroup(Evidence evidence, Quantity leads) implements Case {}

  /** Whether a linked controller that follows switches off when the link is lost. */
  public record LinkLoss(Evidence evidence, Answer follows, Answer fallsToZero) implements Case {}

  private static final double W_PER_KW = 1000;

  private final Setup setup;
  private final Facts facts;
  private final GridSensor sensor;
  private final Entered<List<CurrentSensor>> inputs;

  private MeteringInputs(Setup setup, Facts facts) {
    this.setup = setup;
    this.facts = facts;
    this.sensor = setup.gridSensor();
    this.inputs = setup.diverter().currentSensors();
  }

  public static void derive(Setup setup, Facts facts) {
    MeteringInputs topic = new MeteringInputs(setup, facts);
    topic.unusedInputs();
    topic.gridSensing();
    topic.sensorPhase();
    topic.sensorOnPv();
    topic.sensorCurrent();
    topic.sensorFacing();
    topic.leads();
    topic.linkLosses();
  }

  private Derived<Boolean> diverterFitted() {
    return Derived.of(setup.diverter().part().isFitted());
  }

  private Derived<Boolean> sensorFitted() {
    return Derived.of(sensor.part().isFitted());
  }

  private void unusedInputs() {
    if (!inputs.isEntered()) {
      facts.into(UnusedSensorInput.class, inputs.pointer()).waitsFor(inputs);
      return;
    }
    List<CurrentSensor> all = inputs.optional().orElseThrow();
    if (all.isEmpty()) {
      facts.into(UnusedSensorInput.class, inputs.pointer()).none();
    }
    all.forEach(this::unusedInput);
  }

  private void unusedInput(CurrentSensor input) {
    Derived<Boolean> assigned = Derived.of(input.assigned()).map(to -> to != Assigned.NONE);
    facts
        .into(UnusedSensorInput.class, input.part().pointer())
        .given(assigned)
        .makes(
            because ->
                new UnusedSensorInput(
                    because.explained(
                        () ->
                            Detail.at(input.assigned())
                                .cure(Change.of(input.assigned(), Assigned.NONE))
                                .done()),
                    because.answer(Derived.of(input.part().isFitted())),
                    because.answer(assigned)));
  }

  private void gridSensing() {
    Derived<Boolean> sensed = isSensed();
    facts
        .into(GridSensing.class, sensor.part().pointer())
        .given(sensed)
        .makes(because -> new GridSensing(because.explained(this::blind), because.answer(sensed)));
  }

  /** A sensor must be there; where the controller's inputs are entered, one of them must be its. */
  private Derived<Boolean> isSensed() {
    Derived<Boolean> placed =
        Derived.all(sensorFitted(), Derived.of(sensor.at()).map(at -> at != GridSensor.Place.NONE));
    List<CurrentSensor> all = inputs.optional().orElse(List.of());
    if (all.isEmpty()) {
      return placed;
    }
    Derived<Boolean> read =
        all.stream()
            .map(MeteringInputs::measuresGrid)
            .reduce(Derived.constant(false), (one, other) -> Derived.any(one, other));
    return Derived.all(placed, read);
  }

  private static Derived<Boolean> measuresGrid(CurrentSensor input) {
    return Derived.all(
        Derived.of(input.part().isFitted()),
        Derived.of(input.assigned()).map(to -> to == Assigned.GRID));
  }

  private Detail blind() {
    boolean absent =
        sensor.at().says(GridSensor.Place.NONE) || sensor.part().isFitted().says(false);
    return absent ? Detail.at(sensor.at()).done() : Detail.at(inputs).done();
  }

  private void sensorPhase() {
    SensedPhases phases = new SensedPhases(setup);
    Derived<Boolean> same =
        Derived.of(sensor.phase())
            .with(Derived.of(setup.diverter().phase()), (measured, fed) -> measured == fed);
    facts
        .into(SensorPhase.class, sensor.phase().pointer())
        .fitted(diverterFitted())
        .given(same)
        .makes(
            because ->
                new SensorPhase(
                    because.explained(this::elsewhere),
                    because.answer(
                        Derived.all(
                            phases.several(), phases.measured().map(measured -> measured == 1))),
                    because.answer(Derived.constant(false)),
                    because.answer(same)));
  }

  private Detail elsewhere() {
    Entered<Double> heater = setup.immersion().power_kW();
    Detail.Builder detail =
        Detail.at(sensor.phase(), setup.diverter().phase())
            .size(Size.kilowatts(heater.optional()))
            .cure(Change.of(sensor.phase(), setup.diverter().phase().optional().orElseThrow()));
    return heater.isEntered()
        ? detail
            .evidence(
                Measure.of(
                    "element power not measured", heater.optional().orElseThrow(), Unit.KILOWATT))
            .done()
        : detail.done();
  }

  /** A sensor on one phase never sees the surplus of PV on another. */
  private void sensorOnPv() {
    SensedPhases phases = new SensedPhases(setup);
    Entered<Phase> fed = setup.solar().phase();
    Derived<Boolean> same = Derived.of(sensor.phase()).with(Derived.of(fed), Phase::equals);
    facts
        .into(SensorPhase.class, fed.pointer())
        .fitted(Derived.of(setup.solar().part().isFitted()))
        .given(same)
        .makes(
            because ->
                new SensorPhase(
                    because.explained(this::blindToPv),
                    because.answer(Derived.all(phases.several(), phases.oneOfEach())),
                    because.answer(Derived.not(followsDiverter())),
                    because.answer(same)));
  }

  /** Where sensor and diverter differ already, that is the fault. */
  private Derived<Boolean> followsDiverter() {
    return Derived.any(
        Derived.not(diverterFitted()),
        Derived.of(sensor.phase()).with(Derived.of(setup.diverter().phase()), Phase::equals));
  }

  private Detail blindToPv() {
    Entered<Double> inverter = setup.solar().inverter_kW();
    Detail.Builder detail = Detail.at(sensor.phase(), setup.solar().phase());
    inverter
        .optional()
        .ifPresent(
            power ->
                detail
                    .size(Size.kilowatts(power))
                    .evidence(Measure.of("PV power not measured", power, Unit.KILOWATT)));
    return detail.done();
  }

  /** What the loads that are entered take in together, or what the PV sends out. */
  private void sensorCurrent() {
    Derived<Double> highest = exported_A().with(imported_A(), Math::max);
    Derived<Double> rated = Derived.of(sensor.rated_A());
    facts
        .into(SensorCurrent.class, sensor.rated_A().pointer())
        .given(highest, rated)
        .makes(
            because ->
                new SensorCurrent(
                    because.explained(() -> beyondRating(highest.get(), rated.get())),
                    because.quantity(highest),
                    because.quantity(rated)));
  }

  private Derived<Double> exported_A() {
    Derived<Boolean> fitted = Derived.of(setup.solar().part().isFitted());
    Derived<Double> inverter =
        Derived.of(setup.solar().inverter_kW()).or(Derived.of(setup.solar().peak_kW()));
    Entered<Double> limit = setup.solar().exportLimit_kW();
    Derived<Double> most =
        limit.isEntered() ? inverter.with(Derived.of(limit), Math::min) : inverter;
    return fitted.then(is -> is ? onePhase_A(most, setup.solar().phases()) : Derived.constant(0.0));
  }

  private Derived<Double> imported_A() {
    RelayLoop loop = new RelayLoop(setup);
    Derived<Double> element =
        ifFitted(setup.immersion().part(), () -> current_A(loop.element_kW()));
    Derived<Double> pump =
        ifFitted(
            setup.heatPump().part(), () -> onePhase_A(loop.draw_kW(), setup.heatPump().phases()));
    Derived<Double> charger =
        ifFitted(
            setup.vehicleCharger().part(),
            () ->
                onePhase_A(
                    Derived.of(setup.vehicleCharger().maximum_kW()),
                    setup.vehicleCharger().phases()));
    return Derived.sum(Unit.AMPERE, Derived.sum(Unit.AMPERE, element, pump), charger);
  }

  private static Derived<Double> ifFitted(Part part, Supplier<Derived<Double>> current) {
    return Derived.of(part.isFitted())
        .then(fitted -> fitted ? current.get() : Derived.constant(0.0));
  }

  /** On a supply of one phase nothing spreads. */
  private Derived<Double> onePhase_A(Derived<Double> power_kW, Entered<Double> phases) {
    Derived<Double> spread =
        Derived.of(setup.supply().phases())
            .then(supplied -> supplied == 1 ? Derived.constant(1.0) : Derived.of(phases));
    return current_A(power_kW.with(spread, (power, over) -> power / over));
  }

  private Derived<Double> current_A(Derived<Double> power_kW) {
    return power_kW.with(
        Derived.of(setup.supply().voltage_V()),
        (power, volts) -> Unit.AMPERE.round(W_PER_KW * power / volts));
  }

  private Detail beyondRating(double highest_A, double rated_A) {
    return Detail.at(sensor.rated_A(), setup.solar().inverter_kW())
        .observed(Measure.of("highest current on a phase", highest_A, Unit.AMPERE))
        .limit(Bound.entered("rated current", rated_A, Unit.AMPERE, sensor.rated_A()))
        .basis("PV on its phases, or element, heat pump and charger together")
        .done();
  }

  private void sensorFacing() {
    Derived<Boolean> checked =
        Derived.of(sensor.facing()).map(facing -> facing == GridSensor.Facing.CHECKED);
    facts
        .into(SensorFacing.class, sensor.facing().pointer())
        .given(checked)
        .makes(
            because ->
                new SensorFacing(
                    because.explained(() -> Detail.at(sensor.facing()).done()),
                    because.answer(checked)));
  }

  private void leads() {
    Entered<List<LinkedController>> group = setup.group();
    List<LinkedController> linked = group.optional().orElse(List.of());
    if (!group.isEntered()) {
      facts.into(LinkedGroup.class, group.pointer()).waitsFor(group);
      return;
    }
    if (linked.isEmpty()) {
      facts.into(LinkedGroup.class, group.pointer()).none();
      return;
    }
    Derived<Integer> leads = leads(linked);
    facts
        .into(LinkedGroup.class, group.pointer())
        .given(leads)
        .makes(
            because ->
                new LinkedGroup(
                    because.explained(() -> wrongly(linked, leads.get())),
                    because.quantity(leads)));
  }

  /** Two that lead are one too many, whatever the rest do. */
  private static Derived<Integer> leads(List<LinkedController> linked) {
    Function<LinkedController, Derived<Integer>> one =
        controller -> Derived.of(controller.role()).map(role -> role == Role.LEAD ? 1 : 0);
    Derived<Integer> entered =
        count(linked.stream().filter(each -> each.role().isEntered()).toList(), one);
    return entered.is(leads -> leads > 1) ? entered : count(linked, one);
  }

  private static Derived<Integer> count(
      List<LinkedController> linked, Function<LinkedController, Derived<Integer>> one) {
    return linked.stream()
        .map(one)
        .reduce(Derived.constant(0), (sum, next) -> sum.with(next, Integer::sum));
  }

  private static Detail wrongly(List<LinkedController> linked, int leads) {
    Detail.Builder detail =
        Detail.at(linked.stream().map(each -> each.role().pointer()).toArray(Pointer[]::new))
            .observed(Measure.of("leads in the group", (double) leads, ""))
            .size(Size.share(Math.abs(leads - 1)));
    return leads == 0
        ? detail.cure(Change.of(linked.get(0).role(), Role.LEAD)).done()
        : detail.cure(onlyFirstLeads(linked)).done();
  }

  private static Change[] onlyFirstLeads(List<LinkedController> linked) {
    return linked.stream()
        .filter(each -> each.role().says(Role.LEAD))
        .skip(1)
        .map(each -> Change.of(each.role(), Role.FOLLOWER))
        .toArray(Change[]::new);
  }

  private void linkLosses() {
    Entered<List<LinkedController>> group = setup.group();
    if (!group.isEntered()) {
      facts.into(LinkLoss.class, group.pointer()).waitsFor(group);
      return;
    }
    List<LinkedController> linked = group.optional().orElseThrow();
    if (linked.isEmpty()) {
      facts.into(LinkLoss.class, group.pointer()).none();
    }
    linked.forEach(this::linkLoss);
  }

  private void linkLoss(LinkedController controller) {
    Derived<Boolean> falls = Derived.of(controller.zeroOnLinkLoss());
    facts
        .into(LinkLoss.class, controller.part().pointer())
        .given(falls)
        .makes(
            because ->
                new LinkLoss(
                    because.explained(
                        () ->
                            Detail.at(controller.zeroOnLinkLoss())
                                .cure(Change.of(controller.zeroOnLinkLoss(), true))
                                .done()),
                    because.answer(
                        Derived.of(controller.role()).map(role -> role == Role.FOLLOWER)),
                    because.answer(falls)));
  }
}
