package deadband.topics.ladder;

import static deadband.setup.Unit.CELSIUS;
import static deadband.setup.Unit.KELVIN;

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
import deadband.plant.TankTop;
import deadband.provenance.Derived;
import deadband.setup.Blending;
import deadband.setup.Change;
import deadband.setup.Entered;
import deadband.setup.Outlet;
import deadband.setup.Outlet.Kind;
import deadband.setup.Setup;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Facts about what comes out of each outlet. */
public final class OutletTemperatures {

  private static final Set<Kind> WASHING = EnumSet.of(Kind.BATH, Kind.SHOWER, Kind.BASIN);

  /** Whether an outlet at which people wash is listed. */
  public record WashingOutlet(Evidence evidence, Answer listed) implements Case {}

  /**
   * An outlet without a mixing valve: the hottest the tank gets, and what it may give.
   *
   * @param blended whether a mixing valve protects it
   * @param wholeBody whether its water covers the body
   * @param vulnerable whether vulnerable people use it
   */
  public record OpenOutlet(
      Evidence evidence,
      Answer blended,
      Answer wholeBody,
      Answer vulnerable,
      Quantity peak_C,
      Quantity most_C)
      implements Case {}

  /**
   * An outlet behind a mixing valve: what that is set to, and what it may give.
   *
   * @param blended whether a mixing valve protects it
   * @param forWashing whether a maximum is stated for whoever uses it
   * @param vulnerable whether vulnerable people use it
   */
  public record MixedOutlet(
      Evidence evidence,
      Answer blended,
      Answer forWashing,
      Answer vulnerable,
      Quantity mixed_C,
      Quantity most_C)
      implements Case {}

  private final Setup setup;
  private final Limits limits;
  private final Facts facts;
  private final TankTop top;

  private OutletTemperatures(Setup setup, Limits limits, Facts facts) {
    this.setup = setup;
    this.limits = limits;
    this.facts = facts;
    this.top = new TankTop(setup);
  }

  static void derive(Setup setup, Limits limits, Facts facts) {
    OutletTemperatures topic = new OutletTemperatures(setup, limits, facts);
    List<Outlet> outlets = setup.outlets().optional().orElse(List.of());
    if (outlets.isEmpty()) {
      topic.noOutlets();
    }
    topic.washing();
    outlets.forEach(topic::open);
    outlets.forEach(topic::mixed);
  }

  private void noOutlets() {
    if (setup.outlets().isEntered()) {
      facts.into(OpenOutlet.class, setup.outlets().pointer()).none();
      facts.into(MixedOutlet.class, setup.outlets().pointer()).none();
      return;
    }
    facts.into(OpenOutlet.class, setup.outlets().pointer()).waitsFor(setup.outlets());
    facts.into(MixedOutlet.class, setup.outlets().pointer()).waitsFor(setup.outlets());
  }

  /** Somewhere people wash: a tank that feeds only a kitchen tap is asked about. */
  private void washing() {
    Derived<List<Outlet>> outlets = Derived.of(setup.outlets());
    Derived<Boolean> listed =
        outlets
            .map(all -> all.stream().map(outlet -> Derived.of(outlet.at()).map(WASHING::contains)))
            .then(
                all ->
                    all.reduce(Derived.constant(false), (one, other) -> Derived.any(one, other)));
    facts
        .into(WashingOutlet.class, setup.outlets().pointer())
        .given(listed)
        .makes(
            because ->
                new WashingOutlet(
                    because.explained(() -> Detail.at(setup.outlets()).done()),
                    because.answer(listed)));
  }

  /**
   * Whether a mixing valve protects an outlet: entered, or known by the temperature it is set to.
   * Neither makes a valve where none is entered in {@code blending}, which is there for a valve at
   * the outlet too; and a temperature alone says nothing where no valve is entered at all.
   */
  static Derived<Boolean> isBlended(Outlet outlet, Blending blending) {
    if (blending.valve().says(Blending.Valve.NONE)) {
      return Derived.of(blending.valve()).map(none -> false);
    }
    Derived<Boolean> valve = Derived.of(blending.part().isFitted());
    if (outlet.blended().isEntered()) {
      return valve.isKnown()
          ? Derived.all(Derived.of(outlet.blended()), valve)
          : Derived.of(outlet.blended());
    }
    Derived<Boolean> mixed = Derived.of(outlet.mixed_C()).map(set -> true);
    return mixed.isKnown() ? valve : Derived.missing(outlet.blended().pointer());
  }

  private void open(Outlet outlet) {
    Derived<Limit> most = Derived.of(outlet.at()).map(OutletTemperatures::mostOpen);
    double most_C = most.isKnown() ? limits.value(most.get()) : Double.POSITIVE_INFINITY;
    TankTop.Reading reading = top.against(peak_C -> peak_C > most_C);
    Derived<Boolean> blended = isBlended(outlet, setup.blending());
    Derived<Boolean> wholeBody = Derived.of(outlet.at()).map(OutletCeiling::coversBody);
    Derived<Boolean> vulnerable = vulnerable();
    facts
        .into(OpenOutlet.class, outlet.part().pointer())
        .given(blended, Derived.any(wholeBody, vulnerable), most, reading.peak_C())
        .foundOnlyWith(reading.openIfFound())
        .clearOnlyWith(reading.openIfClear())
        .makes(
            because ->
                new OpenOutlet(
                    because.explained(() -> scalds(outlet, most.get(), reading.peak_C().get())),
                    facts.answer(blended),
                    facts.answer(wholeBody),
                    facts.answer(vulnerable),
                    because.quantity(reading.peak_C()),
                    because.quantity(most.map(limits::value))));
  }

  private Derived<Boolean> vulnerable() {
    return Derived.of(setup.site().vulnerableOccupants());
  }

  private Detail scalds(Outlet outlet, Limit most, double peak_C) {
    double most_C = limits.value(most);
    Stream<Entered<?>> valve =
        isBlended(outlet, setup.blending())
                .provenance()
                .entered()
                .contains(outlet.blended().pointer())
            ? Stream.of(outlet.blended())
            : Stream.of(outlet.blended(), outlet.mixed_C(), setup.blending().valve());
    Stream<Entered<?>> hottest =
        top.culprits(hot_C -> hot_C > most_C).stream().limit(1).map(TankTop.Source::setting);
    return Detail.at(
            Stream.concat(valve.filter(Entered::isEntered), hottest).toArray(Entered<?>[]::new))
        .observed(Measure.of("maximum at the outlet", peak_C, CELSIUS))
        .limit(Bound.of("maximum at that outlet", most_C, limits.of(most)))
        .size(Size.kelvin(KELVIN.round(peak_C - most_C)))
        .evidence(top.evidence(peak_C))
        .done();
  }

  private void mixed(Outlet outlet) {
    Derived<Double> mixed = Derived.of(outlet.mixed_C());
    Derived<Boolean> blended = isBlended(outlet, setup.blending());
    Derived<Boolean> forWashing =
        Derived.of(outlet.at()).map(kind -> OutletCeiling.recommended(kind).isPresent());
    Derived<Boolean> vulnerable = vulnerable();
    Derived<OutletCeiling> most =
        Derived.of(outlet.at())
            .with(mixed, (kind, mixed_C) -> OutletCeiling.of(kind, mixed_C, setup, limits))
            .then(this::known);
    facts
        .into(MixedOutlet.class, outlet.part().pointer())
        .given(blended, Derived.any(forWashing, vulnerable), mixed, most)
        .clearOnlyWith(vulnerableIfItMatters(outlet))
        .makes(
            because ->
                new MixedOutlet(
                    because.explained(() -> setTooHot(outlet, most.get())),
                    facts.answer(blended),
                    facts.answer(forWashing),
                    facts.answer(vulnerable),
                    because.quantity(mixed),
                    because.quantity(most.map(ceiling -> ceiling.limit().value()))));
  }

  /** A kitchen tap has no maximum unless vulnerable people use it. */
  private Derived<OutletCeiling> known(Optional<OutletCeiling> ceiling) {
    return ceiling
        .map(Derived::constant)
        .orElseGet(() -> Derived.missing(setup.site().vulnerableOccupants().pointer()));
  }

  /** Water that only vulnerable people must not have on the whole body. */
  private List<Pointer> vulnerableIfItMatters(Outlet outlet) {
    double most_C = limits.value(Limit.OUTLET_VULNERABLE_BODY);
    boolean matters =
        Derived.of(outlet.at()).is(OutletCeiling::coversBody)
            && Derived.of(outlet.mixed_C()).is(mixed_C -> mixed_C > most_C);
    return matters
        ? Derived.of(setup.site().vulnerableOccupants()).provenance().missing()
        : List.of();
  }

  private Detail setTooHot(Outlet outlet, OutletCeiling most) {
    double mixed_C = Derived.of(outlet.mixed_C()).get();
    double most_C = most.limit().value();
    double lowest_C = OutletCeiling.lowest_C(Derived.of(outlet.at()).get(), setup, limits);
    return Detail.at(outlet.mixed_C())
        .observed(Measure.of("mixed temperature", mixed_C, CELSIUS))
        .limit(most.bound())
        .size(Size.kelvin(KELVIN.round(mixed_C - most_C)))
        .evidence(TankTop.timeToBurn(mixed_C).stream().toArray(Measure[]::new))
        .cure(Change.of(outlet.mixed_C(), Dial.down_C(lowest_C)))
        .done();
  }

  private static Limit mostOpen(Kind kind) {
    return OutletCeiling.recommended(kind).orElse(Limit.OUTLET_VULNERABLE);
  }
}
