package deadband.topics.ladder;

import static deadband.setup.Unit.CELSIUS;
import static deadband.setup.Unit.KELVIN;
import static deadband.setup.Unit.MINUTE;

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
import deadband.plant.SensorTolerance;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.ClockWindow;
import deadband.setup.Disinfection;
import deadband.setup.Diverter;
import deadband.setup.HeatPump;
import deadband.setup.Immersion;
import deadband.setup.Programme;
import deadband.setup.Setup;
import deadband.setup.Tank;
import java.util.ArrayList;
import java.util.List;

/** Facts about whether the settings let the tank become hot enough to stay free of legionella. */
public final class StoreHygiene {

  private static final double THERMOSTAT_CLEAR_K = 2;
  private static final double DIAL_STEP_K = 0.5;

  /** What the tank is let reach where the immersion heater disinfects, and what that needs. */
  public record DisinfectionReach(
      Evidence evidence, Quantity limit_C, double least_C, Quantity opening_C, Quantity target_C)
      implements Case {}

  /** How far the diverter opens above the disinfection target, and how far its sensor may err. */
  public record DisinfectionMargin(Evidence evidence, Quantity spare_K, Quantity tolerance_K)
      implements Case {}

  /** The immersion heater's own thermostat, and the disinfection it must let through. */
  public record ThermostatReach(Evidence evidence, Quantity thermostat_C, Quantity target_C)
      implements Case {}

  /**
   * The coolest the store rests at, and the top of the growth band.
   *
   * @param disinfected whether a programme disinfects it, as often as any cycle asks
   */
  public record RestingStore(
      Evidence evidence, Answer disinfected, Quantity rest_C, double growthBandTop_C)
      implements Case {}

  /** How long a day a circulation moves the water in its pipes, against the least that does. */
  public record CirculationRest(Evidence evidence, Quantity runs_min, double least_min)
      implements Case {}

  private final Setup setup;
  private final DisinfectionDuty duty;
  private final Diverter diverter;
  private final Immersion immersion;
  private final HeatPump heatPump;
  private final Disinfection disinfection;
  private final Limits limits;
  private final Facts facts;
  private final TankLimit limit;
  private final SensorTolerance tolerance;

  private StoreHygiene(Setup setup, Limits limits, Facts facts) {
    this.setup = setup;
    this.duty = new DisinfectionDuty(setup, limits);
    this.diverter = setup.diverter();
    this.immersion = setup.immersion();
    this.heatPump = setup.heatPump();
    this.disinfection = heatPump.disinfection();
    this.limits = limits;
    this.facts = facts;
    this.limit = new TankLimit(setup);
    this.tolerance = new SensorTolerance(setup);
  }

  static void derive(Setup setup, Limits limits, Facts facts) {
    StoreHygiene topic = new StoreHygiene(setup, limits, facts);
    topic.reach();
    topic.openingMargin();
    topic.thermostatReach();
    topic.restingStore();
    topic.unheatedStore();
    topic.circulation();
  }

  /** The programme is the heat pump's; without one, no-disinfection looks at the store. */
  private Derived<Boolean> programmeFitted() {
    return Derived.notAbsent(heatPump.part());
  }

  private Derived<Double> target_C() {
    return Derived.of(disinfection.target_C());
  }

  private double least_C() {
    return limits.value(Limit.DISINFECTION_TEMPERATURE);
  }

  /** Where the limit itself is too low, the opening and the target need not be asked. */
  private void reach() {
    Derived<Double> reached = limit.limit_C();
    Derived<Double> target = target_C();
    boolean limitShort = reached.is(limit_C -> limit_C < least_C());
    boolean surelyShort =
        limit.highestOpening_C().with(target, (opening, needed) -> opening < needed).is(is -> is);
    Derived<Double> opening = surelyShort ? limit.highestOpening_C() : limit.lowestOpening_C();
    Facts.Assessment assessment =
        facts.into(DisinfectionReach.class, diverter.part().pointer()).fitted(programmeFitted());
    (limitShort ? assessment.given(reached) : assessment.given(reached, opening, target))
        .foundOnlyWith(limitShort || surelyShort ? List.of() : limit.open())
        .makes(
            because ->
                new DisinfectionReach(
                    because.explained(
                        () -> limitShort ? limitTooLow(reached.get()) : opensEarly(opening.get())),
                    because.quantity(reached),
                    least_C(),
                    because.quantity(opening),
                    because.quantity(target)));
  }

  private Detail limitTooLow(double limit_C) {
    return shortOf(
        Measure.of("tank limit", limit_C, CELSIUS),
        Bound.of("minimum for disinfection", least_C(), limits.of(Limit.DISINFECTION_TEMPERATURE)));
  }

  private Detail opensEarly(double opening_C) {
    return shortOf(Measure.of("diverter opens at", opening_C, CELSIUS), targetBound());
  }

  private Bound targetBound() {
    return Bound.entered("disinfection target", target_C().get(), CELSIUS, disinfection.target_C());
  }

  private Detail shortOf(Measure reached, Bound needed) {
    return Detail.at(diverter.limit_C(), disinfection.target_C())
        .observed(reached)
        .limit(needed)
        .size(Size.kelvin(KELVIN.round(needed.measure().value() - reached.value())))
        .evidence(evidence())
        .cures(raisedLimits())
        .done();
  }

  private Measure[] evidence() {
    List<Measure> evidence = new ArrayList<>();
    evidence.add(Measure.of("tank limit", limit.limit_C().get(), CELSIUS));
    if (limit.opening_C().isKnown()) {
      evidence.add(Measure.of("diverter opens at", limit.opening_C().get(), CELSIUS));
    }
    if (target_C().isKnown()) {
      evidence.add(Measure.of("disinfection target", target_C().get(), CELSIUS));
    }
    return evidence.toArray(new Measure[0]);
  }

  /** The lowest limit that suffices by the sensor's tolerance too; else the lowest that does. */
  private List<List<Change>> raisedLimits() {
    double target_C = target_C().isKnown() ? target_C().get() : least_C();
    Derived<Double> either = tolerance.diverter_K(Derived.constant(target_C));
    double tolerance_K = either.isKnown() ? either.get() : 0;
    return List.of(
        List.of(Change.of(diverter.limit_C(), raised_C(target_C + tolerance_K))),
        List.of(Change.of(diverter.limit_C(), raised_C(target_C))));
  }

  /** The lowest limit on the dial at which the diverter opens no earlier than this. */
  private double raised_C(double opening_C) {
    double lift_K = limit.lowestOpening_C().get() - limit.limit_C().get();
    return Dial.up_C(CELSIUS.round(Math.max(least_C(), opening_C - lift_K)));
  }

  private void openingMargin() {
    Derived<Double> opening = limit.lowestOpening_C();
    Derived<Double> spare = Derived.difference(KELVIN, opening, target_C());
    Derived<Double> either = tolerance.diverter_K(opening);
    facts
        .into(DisinfectionMargin.class, disinfection.part().pointer())
        .fitted(programmeFitted(), Derived.notAbsent(diverter.sensor().part()))
        .given(spare, either)
        .foundOnlyWith(limit.open())
        .makes(
            because ->
                new DisinfectionMargin(
                    because.explained(() -> thin(spare.get(), either.get())),
                    because.quantity(spare),
                    because.quantity(either)));
  }

  private Detail thin(double spare_K, double tolerance_K) {
    return Detail.at(diverter.limit_C(), disinfection.target_C())
        .observed(Measure.of("diverter opens above the target by", spare_K, KELVIN))
        .limit(
            Bound.calculated(
                "tolerance of the tank sensor", tolerance_K, KELVIN, "tolerance of the sensor"))
        .evidence(evidence())
        .cures(raisedLimits())
        .basis("tolerance of the tank sensor, IEC 60751 where it is platinum")
        .done();
  }

  private void thermostatReach() {
    Derived<Double> thermostat = Derived.of(immersion.thermostat_C());
    Derived<Double> target = target_C();
    facts
        .into(ThermostatReach.class, immersion.part().pointer())
        .fitted(programmeFitted())
        .given(thermostat, target)
        .makes(
            because ->
                new ThermostatReach(
                    because.explained(() -> opensFirst(thermostat.get(), target.get())),
                    because.quantity(thermostat),
                    because.quantity(target)));
  }

  private Detail opensFirst(double thermostat_C, double target_C) {
    double opening_C =
        limit.highestOpening_C().isKnown() ? limit.highestOpening_C().get() : target_C;
    double above_C = Math.max(target_C, opening_C) + THERMOSTAT_CLEAR_K;
    return Detail.at(immersion.thermostat_C(), disinfection.target_C())
        .observed(Measure.of("immersion thermostat", thermostat_C, CELSIUS))
        .limit(targetBound())
        .size(Size.kelvin(KELVIN.round(target_C - thermostat_C)))
        .cure(Change.of(immersion.thermostat_C(), Dial.up_C(above_C)))
        .cure(Change.of(immersion.thermostat_C(), Dial.up_C(target_C)))
        .done();
  }

  private void restingStore() {
    Derived<Boolean> disinfected = duty.worth().map(worth -> worth == Worth.ENOUGH);
    Derived<Double> rest = Derived.of(heatPump.everyday().start_C());
    double top_C = limits.value(Limit.GROWTH_BAND_TOP);
    facts
        .into(RestingStore.class, heatPump.everyday().part().pointer())
        .fitted(Derived.of(heatPump.part().isFitted()))
        .given(disinfected, rest)
        .makes(
            because ->
                new RestingStore(
                    because.explained(() -> growing(rest.get(), top_C)),
                    because.answer(disinfected),
                    because.quantity(rest),
                    top_C));
  }

  /** Without a heat pump the store gets as warm as diverter, timer and thermostat let it. */
  private void unheatedStore() {
    Derived<Double> hottest = new EverydayHeat(setup, limits).hottestWithoutHeatPump_C();
    double top_C = limits.value(Limit.GROWTH_BAND_TOP);
    facts
        .into(RestingStore.class, diverter.limit_C().pointer())
        .fitted(
            Derived.not(Derived.of(heatPump.part().isFitted())),
            Derived.of(immersion.part().isFitted()))
        .given(hottest)
        .makes(
            because ->
                new RestingStore(
                    because.explained(
                        () ->
                            grows(
                                    List.of(
                                        diverter.limit_C().pointer(),
                                        immersion.thermostat_C().pointer()),
                                    hottest.get(),
                                    top_C,
                                    true)
                                .done()),
                    because.answer(Derived.constant(false)),
                    because.quantity(hottest),
                    top_C));
  }

  /** Water that stands warm in a circulation all day is as good as a dead leg. */
  private void circulation() {
    Tank tank = setup.tank();
    Limits.Entry least = limits.of(Limit.CIRCULATION_LEAST);
    Derived<Double> runs =
        Derived.of(tank.circulationTimes())
            .map(windows -> (double) new ClockWindow(0, 0).sharedWith_min(windows));
    facts
        .into(CirculationRest.class, tank.circulationTimes().pointer())
        .fitted(Derived.notAbsent(tank.part()))
        .given(runs)
        .makes(
            because ->
                new CirculationRest(
                    because.explained(
                        () ->
                            Detail.at(tank.circulationTimes(), tank.circulation())
                                .observed(Measure.of("circulation runs", runs.get(), MINUTE))
                                .limit(Bound.of("minimum per day", least.value(), least))
                                .basis("minutes of the day")
                                .done()),
                    because.quantity(runs),
                    least.value()));
  }

  private Detail growing(double rest_C, double top_C) {
    List<Pointer> at = new ArrayList<>(List.of(heatPump.everyday().start_C().pointer()));
    at.addAll(duty.culprits());
    boolean firm = duty.worth().is(worth -> worth == Worth.NOTHING);
    return grows(at, rest_C, top_C, firm).cures(growthCures(rest_C, top_C)).done();
  }

  /** Where a disinfection kills, but less than any cycle asks, it is a question. */
  private Detail.Builder grows(List<Pointer> at, double rest_C, double top_C, boolean firm) {
    Limits.Entry top = limits.of(Limit.GROWTH_BAND_TOP);
    return Detail.at(at.toArray(new Pointer[0]))
        .observed(Measure.of("lowest store temperature", rest_C, CELSIUS))
        .limit(Bound.of("upper end of the growth band", top_C, top).firmIf(top.isFirm() && firm))
        .size(Size.kelvin(KELVIN.round(top_C - rest_C)));
  }

  /** Let the programme that is described run; else keep the store above the band. */
  private List<List<Change>> growthCures(double rest_C, double top_C) {
    List<List<Change>> cures = new ArrayList<>();
    boolean off = disinfection.enabled().says(false);
    if (off && disinfection.target_C().isEntered() && disinfection.heater().isEntered()) {
      cures.add(List.of(Change.of(disinfection.enabled(), true)));
    }
    Programme everyday = heatPump.everyday();
    double start_C = Dial.up_C(top_C) + DIAL_STEP_K;
    List<Change> raised = new ArrayList<>(List.of(Change.of(everyday.start_C(), start_C)));
    everyday
        .stop_C()
        .optional()
        .filter(stop_C -> stop_C <= start_C)
        .ifPresent(
            stop_C ->
                raised.add(Change.of(everyday.stop_C(), CELSIUS.round(stop_C + start_C - rest_C))));
    cures.add(List.copyOf(raised));
    return cures;
  }
}
