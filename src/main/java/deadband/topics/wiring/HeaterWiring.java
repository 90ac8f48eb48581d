package deadband.topics.wiring;

import static deadband.setup.Unit.AMPERE;
import static deadband.setup.Unit.KILOWATT;
import static deadband.setup.Unit.LITRE;
import static deadband.setup.Unit.METRE;
import static deadband.setup.Unit.VOLT;

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
import deadband.plant.Dial;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.Circuit;
import deadband.setup.Circuit.RcdType;
import deadband.setup.Entered;
import deadband.setup.Immersion;
import deadband.setup.Setup;
import deadband.trade.CableRating;
import deadband.trade.HeaterCircuit;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Facts about the circuit that feeds the immersion heater.
 *
 * <p>A limit of a British text that carries a hazard at home raises a question abroad. What only
 * the heater's tolerance or a high supply voltage breaks is a question everywhere.
 */
public final class HeaterWiring {

  /** The breaker of the heater's circuit, and what the cable carries. */
  public record CableBreaker(Evidence evidence, Quantity breaker_A, Quantity cable_A)
      implements Case {}

  /** The volt drop along the cable of the heater, and the most it may be. */
  public record VoltDrop(Evidence evidence, Quantity drop_V, Quantity most_V) implements Case {}

  /** Current of the heater at the voltage of the site, and its breaker. */
  public record HeaterCurrent(Evidence evidence, Quantity current_A, Quantity breaker_A)
      implements Case {}

  /** Current of the heater at the highest voltage of the supply and at the usual one. */
  public record HighestHeaterCurrent(
      Evidence evidence, Quantity current_A, Quantity usual_A, Quantity breaker_A)
      implements Case {}

  /** Whether the heater of a tank of that volume has a circuit of its own. */
  public record CircuitShare(Evidence evidence, Quantity volume_L, double ownAbove_L, Answer own)
      implements Case {}

  /** Whether the flexible cord withstands heat. */
  public record FlexKind(Evidence evidence, Answer heatResistant) implements Case {}

  /** Current of the heater, and what its flexible cord carries. */
  public record FlexLoad(Evidence evidence, Quantity current_A, Quantity flex_A) implements Case {}

  /** Whether a second switch can feed the heater around the diverter. */
  public record SecondSwitch(Evidence evidence, Answer present) implements Case {}

  /** Whether a residual-current device is blind to the currents of electronics. */
  public record ResidualCurrentDevice(Evidence evidence, Answer blind) implements Case {}

  /** Whether a rating is entered, and the most that such a conductor carries. */
  public record EnteredRating(Evidence evidence, Answer entered, Quantity rating_A, Quantity most_A)
      implements Case {}

  /** Power of the element, and the rating of the diverter. */
  public record DiverterLoad(Evidence evidence, Quantity element_kW, Quantity most_kW)
      implements Case {}

  private final Setup setup;
  private final Limits limits;
  private final Facts facts;
  private final Immersion heater;
  private final Circuit circuit;
  private final ConductorRatings conductors;

  private HeaterWiring(Setup setup, Limits limits, Facts facts) {
    this.setup = setup;
    this.limits = limits;
    this.facts = facts;
    this.heater = setup.immersion();
    this.circuit = heater.circuit();
    this.conductors = new ConductorRatings(setup);
  }

  public static void derive(Setup setup, Limits limits, Facts facts) {
    HeaterWiring topic = new HeaterWiring(setup, limits, facts);
    topic.breakerOverCable();
    topic.voltDrop();
    topic.current();
    topic.highestCurrent();
    topic.share();
    topic.flexKind();
    topic.flexLoad();
    topic.secondSwitch();
    topic.residualCurrentDevice();
    topic.enteredRating(topic.circuit.cableRating_A(), topic.conductors.mostOfCable());
    topic.enteredRating(topic.circuit.flexRating_A(), topic.conductors.mostOfFlex());
    topic.diverterLoad();
  }

  private Derived<Double> voltage_V() {
    return Derived.of(setup.supply().voltage_V());
  }

  private Derived<Double> breaker_A() {
    return Derived.of(circuit.breaker_A());
  }

  private Derived<Double> current_A(Derived<Double> voltage_V) {
    return Derived.of(heater.power_kW())
        .with(Derived.of(heater.ratedAt_V()), Rating::new)
        .with(
            voltage_V,
            (rated, at_V) ->
                AMPERE.round(HeaterCircuit.current_A(rated.power_kW(), rated.at_V(), at_V)));
  }

  private record Rating(double power_kW, double at_V) {}

  private void breakerOverCable() {
    Derived<Bound> cable = conductors.cable(breaker_A());
    facts
        .into(CableBreaker.class, circuit.breaker_A().pointer())
        .given(breaker_A(), cable)
        .makes(
            because ->
                new CableBreaker(
                    because.explained(() -> overloads(cable.get())),
                    because.quantity(breaker_A()),
                    because.quantity(value(cable))));
  }

  private static Derived<Double> value(Derived<Bound> bound) {
    return bound.map(most -> most.measure().value());
  }

  private Detail overloads(Bound cable) {
    Detail.Builder detail =
        Detail.at(circuit.breaker_A(), circuit.cable_mm2(), circuit.method())
            .observed(Measure.of("breaker", breaker_A().get(), AMPERE))
            .limit(cable)
            .size(Size.overload(breaker_A().get(), cable.measure().value()));
    return atBreaker(detail, Dial.breakerDown_A(cable.measure().value()));
  }

  private Detail atBreaker(Detail.Builder detail, OptionalDouble rating_A) {
    rating_A.ifPresent(rating -> detail.cure(Change.of(circuit.breaker_A(), rating)));
    return detail.done();
  }

  private void voltDrop() {
    Derived<CableRating.Size> size = Derived.of(circuit.cable_mm2()).then(this::sizeForDrop);
    Derived<Double> drop =
        size.with(current_A(voltage_V()), Run::new)
            .with(
                Derived.of(circuit.length_m()),
                (run, length_m) ->
                    VOLT.round(HeaterCircuit.voltDrop_V(run.size(), run.current_A(), length_m)));
    Derived<Double> most =
        voltage_V().map(volts -> VOLT.round(limits.value(Limit.VOLT_DROP_SHARE) * volts));
    facts
        .into(VoltDrop.class, circuit.length_m().pointer())
        .given(drop, most)
        .foundOnlyWith(openSize())
        .makes(
            because ->
                new VoltDrop(
                    because.explained(() -> drops(size.get(), drop.get(), most.get())),
                    because.quantity(drop),
                    because.quantity(most)));
  }

  private record Run(CableRating.Size size, double current_A) {}

  /** A cable larger than any of the table drops less than the largest of them. */
  private Derived<CableRating.Size> sizeForDrop(double size_mm2) {
    return CableRating.Size.largestUpTo(size_mm2)
        .map(Derived::constant)
        .orElseGet(() -> Derived.missing(circuit.cable_mm2().pointer()));
  }

  private List<Pointer> openSize() {
    boolean tabled = circuit.cable_mm2().optional().flatMap(CableRating.Size::find).isPresent();
    return tabled ? List.of() : List.of(circuit.cable_mm2().pointer());
  }

  private Detail drops(CableRating.Size size, double drop_V, double most_V) {
    double perMetre_V = HeaterCircuit.voltDrop_V(size, current_A(voltage_V()).get(), 1);
    return Detail.at(circuit.length_m(), circuit.cable_mm2())
        .observed(Measure.of("volt drop", drop_V, VOLT))
        .limit(
            BritishText.bound(
                setup,
                Measure.of("maximum volt drop", most_V, VOLT),
                limits.of(Limit.VOLT_DROP_SHARE)))
        .evidence(Measure.of("maximum length of this cable", most_V / perMetre_V, METRE))
        .basis("mV/A/m of the cable, current and length")
        .done();
  }

  private void current() {
    Derived<Double> current = current_A(voltage_V());
    facts
        .into(HeaterCurrent.class, heater.power_kW().pointer())
        .given(current, breaker_A())
        .makes(
            because ->
                new HeaterCurrent(
                    because.explained(
                        () -> above("heater current", current.get(), voltage_V().get())),
                    because.quantity(current),
                    because.quantity(breaker_A())));
  }

  /** Whether the heater exceeds a rating at nominal voltage by more than its own tolerance. */
  private boolean surelyAbove(double rating_A) {
    double share = 1 + limits.value(Limit.HEATER_POWER_TOLERANCE);
    Derived<Double> nominal_V = voltage_V().map(HeaterCircuit::nominal_V);
    return current_A(nominal_V).is(current -> current > AMPERE.round(share * rating_A));
  }

  private Bound sure(Bound rating) {
    return surelyAbove(rating.measure().value()) ? rating : rating.brokenByToleranceAlone();
  }

  private Detail above(String quantity, double current_A, double voltage_V) {
    double breaker = breaker_A().get();
    Detail.Builder detail =
        Detail.at(circuit.breaker_A(), heater.power_kW(), heater.ratedAt_V())
            .observed(Measure.of(quantity, current_A, AMPERE))
            .limit(sure(Bound.entered("breaker", breaker, AMPERE, circuit.breaker_A())))
            .size(Size.overload(current_A, breaker))
            .evidence(Measure.of("voltage", voltage_V, VOLT));
    OptionalDouble carrying_A = Dial.breakerUp_A(current_A);
    Derived<Double> most_A = protected_A();
    boolean allowed = most_A.is(most -> carrying_A.isPresent() && carrying_A.getAsDouble() <= most);
    return atBreaker(detail, allowed ? carrying_A : OptionalDouble.empty());
  }

  /** What the weaker of cable and flex carries: no breaker above it protects both. */
  private Derived<Double> protected_A() {
    Derived<Double> weaker =
        conductors
            .cable()
            .map(cable -> cable.measure().value())
            .with(conductors.flex().map(flex -> flex.measure().value()), Math::min);
    boolean remembered = weaker.isAssumed();
    return remembered ? Derived.missing(circuit.cableRating_A().pointer()) : weaker;
  }

  /** The same, of a setup. */
  public static Derived<Double> protected_A(Setup setup, Limits limits) {
    return new HeaterWiring(setup, limits, new Facts()).protected_A();
  }

  /** Where the breaker is too small at the voltage of the site already, see there. */
  private void highestCurrent() {
    Derived<Double> highest_V = voltage_V().map(HeaterCircuit::highest_V).map(VOLT::round);
    Derived<Double> current = current_A(highest_V);
    Derived<Double> usual = current_A(voltage_V());
    facts
        .into(HighestHeaterCurrent.class, heater.power_kW().pointer())
        .given(current, usual, breaker_A())
        .makes(
            because ->
                new HighestHeaterCurrent(
                    because.explained(
                        () -> above("highest heater current", current.get(), highest_V.get())),
                    because.quantity(current),
                    because.quantity(usual),
                    because.quantity(breaker_A())));
  }

  /** Of a tank that is not there, nothing says that it is small. */
  private Derived<Double> volume_L() {
    Derived<Boolean> there = Derived.notAbsent(setup.tank().part());
    return there.then(
        is -> is ? Derived.of(setup.tank().volume_L()) : Derived.constant(Double.MAX_VALUE));
  }

  private void share() {
    double from_L = limits.value(Limit.OWN_CIRCUIT_ABOVE);
    Derived<Double> volume = volume_L();
    Derived<Boolean> own = Derived.of(circuit.ownCircuit());
    facts
        .into(CircuitShare.class, circuit.ownCircuit().pointer())
        .given(volume, own)
        .makes(
            because ->
                new CircuitShare(
                    because.explained(() -> shared(from_L)),
                    because.quantity(volume),
                    from_L,
                    because.answer(own)));
  }

  private Detail shared(double from_L) {
    Measure limit = Measure.of("own circuit required above", from_L, LITRE);
    Detail.Builder detail =
        Detail.at(circuit.ownCircuit(), setup.tank().volume_L())
            .limit(BritishText.bound(setup, limit, limits.of(Limit.OWN_CIRCUIT_ABOVE)))
            .size(Size.WHOLE);
    setup
        .tank()
        .volume_L()
        .optional()
        .ifPresent(volume -> detail.observed(Measure.of("tank", volume, LITRE)));
    return detail.done();
  }

  private void flexKind() {
    Derived<Boolean> resistant = Derived.of(circuit.flexHeatResistant());
    facts
        .into(FlexKind.class, circuit.flexHeatResistant().pointer())
        .given(resistant)
        .makes(
            because ->
                new FlexKind(because.explained(this::ordinaryFlex), because.answer(resistant)));
  }

  private Detail ordinaryFlex() {
    return Detail.at(circuit.flexHeatResistant())
        .cure(Change.of(circuit.flexHeatResistant(), true))
        .done();
  }

  private void flexLoad() {
    Derived<Double> current = current_A(voltage_V());
    Derived<Bound> flex = conductors.flex(current);
    facts
        .into(FlexLoad.class, circuit.flex_mm2().pointer())
        .given(current, flex)
        .makes(
            because ->
                new FlexLoad(
                    because.explained(() -> thin(current.get(), flex.get())),
                    because.quantity(current),
                    because.quantity(value(flex))));
  }

  private Detail thin(double current_A, Bound flex) {
    return Detail.at(circuit.flex_mm2(), heater.power_kW(), circuit.flexHeatResistant())
        .observed(Measure.of("heater current", current_A, AMPERE))
        .limit(sure(flex))
        .size(Size.overload(current_A, flex.measure().value()))
        .done();
  }

  private void secondSwitch() {
    Derived<Boolean> present = Derived.of(circuit.secondSwitch());
    facts
        .into(SecondSwitch.class, circuit.secondSwitch().pointer())
        .given(present)
        .makes(
            because ->
                new SecondSwitch(
                    because.explained(() -> Detail.at(circuit.secondSwitch()).done()),
                    because.answer(present)));
  }

  private void residualCurrentDevice() {
    Derived<Boolean> blind =
        Derived.of(circuit.rcdType()).map(type -> type == RcdType.AC || type == RcdType.NONE);
    facts
        .into(ResidualCurrentDevice.class, circuit.rcdType().pointer())
        .given(blind)
        .makes(
            because ->
                new ResidualCurrentDevice(
                    because.explained(() -> Detail.at(circuit.rcdType()).done()),
                    because.answer(blind)));
  }

  /** A rating that is entered outranks the tables only as far as such a conductor can carry it. */
  private void enteredRating(Entered<Double> value, Derived<Bound> most) {
    Derived<Boolean> entered = Derived.of(heater.part().isFitted()).map(is -> value.isEntered());
    Derived<Double> rating = Derived.of(value);
    facts
        .into(EnteredRating.class, value.pointer())
        .given(entered, rating, most)
        .makes(
            because ->
                new EnteredRating(
                    because.explained(
                        () ->
                            Detail.at(value)
                                .observed(Measure.of("rating entered", rating.get(), AMPERE))
                                .limit(most.get())
                                .done()),
                    because.answer(entered),
                    because.quantity(rating),
                    because.quantity(value(most))));
  }

  /** At nominal voltage: what a high supply adds is within the plate of either. */
  private void diverterLoad() {
    Derived<Double> element = power_kW(voltage_V().map(HeaterCircuit::nominal_V));
    Derived<Double> most = Derived.of(setup.diverter().maximum_kW());
    facts
        .into(DiverterLoad.class, setup.diverter().maximum_kW().pointer())
        .given(element, most)
        .makes(
            because ->
                new DiverterLoad(
                    because.explained(() -> overRating(element.get(), most.get())),
                    because.quantity(element),
                    because.quantity(most)));
  }

  private Derived<Double> power_kW(Derived<Double> voltage_V) {
    return Derived.of(heater.power_kW())
        .with(Derived.of(heater.ratedAt_V()), Rating::new)
        .with(
            voltage_V,
            (rated, at_V) ->
                KILOWATT.round(HeaterCircuit.power_kW(rated.power_kW(), rated.at_V(), at_V)));
  }

  private Detail overRating(double element_kW, double most_kW) {
    Entered<Double> plate = setup.diverter().maximum_kW();
    return Detail.at(heater.power_kW(), heater.ratedAt_V(), plate)
        .observed(Measure.of("power of the element", element_kW, KILOWATT))
        .limit(Bound.entered("rating of the diverter", most_kW, KILOWATT, plate))
        .done();
  }
}
