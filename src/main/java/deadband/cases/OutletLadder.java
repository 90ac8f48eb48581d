package deadband.cases;

import static deadband.setup.Unit.CELSIUS;
import static deadband.setup.Unit.KELVIN;

import deadband.setup.Change;
import deadband.setup.Outlet;
import deadband.setup.Outlet.Kind;
import deadband.setup.Setup;
import deadband.setup.Told;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Cases about what comes out of each outlet. */
final class OutletLadder {

  private final Setup setup;
  private final Limits limits;
  private final Cases cases;
  private final TankTop top;

  private OutletLadder(Setup setup, Limits limits, Cases cases) {
    this.setup = setup;
    this.limits = limits;
    this.cases = cases;
    this.top = new TankTop(setup);
  }

  static void derive(Setup setup, Limits limits, Cases cases) {
    OutletLadder topic = new OutletLadder(setup, limits, cases);
    List<Outlet> outlets = setup.outlets().optional().orElse(List.of());
    if (outlets.isEmpty()) {
      topic.noOutlets();
    }
    outlets.forEach(topic::open);
    outlets.forEach(topic::mixed);
  }

  private void noOutlets() {
    if (setup.outlets().isTold()) {
      cases.into(OpenOutlet.class, setup.outlets().pointer()).none();
      cases.into(MixedOutlet.class, setup.outlets().pointer()).none();
      return;
    }
    cases.into(OpenOutlet.class, setup.outlets().pointer()).waitsFor(setup.outlets());
    cases.into(MixedOutlet.class, setup.outlets().pointer()).waitsFor(setup.outlets());
  }

  /** Whether a mixing valve protects an outlet: told, or known by the temperature it is set to. */
  static Derived<Boolean> isBlended(Outlet outlet) {
    return Derived.of(outlet.blended()).or(Derived.of(outlet.mixed_C()).map(mixed -> true));
  }

  private void open(Outlet outlet) {
    Derived<Limit> most = Derived.of(outlet.at()).map(OutletLadder::mostOpen);
    double most_C = most.isKnown() ? limits.value(most.get()) : Double.POSITIVE_INFINITY;
    TankTop.Reading reading = top.against(peak_C -> peak_C > most_C);
    cases
        .into(OpenOutlet.class, outlet.part().pointer())
        .fitted(top.fitted())
        .where(Derived.not(isBlended(outlet)), isJudged(outlet))
        .given(most, reading.peak_C())
        .foundOnlyWith(reading.openIfFound())
        .clearOnlyWith(reading.openIfClear())
        .makes(
            because ->
                new OpenOutlet(
                    because.explained(() -> scalds(outlet, most.get(), reading.peak_C().get())),
                    reading.peak_C().get(),
                    most_C));
  }

  /** Bath and shower always; any other outlet where vulnerable people use it. */
  private Derived<Boolean> isJudged(Outlet outlet) {
    return Derived.any(
        Derived.of(outlet.at()).map(kind -> kind == Kind.BATH || kind == Kind.SHOWER),
        Derived.of(setup.site().vulnerableOccupants()));
  }

  private Detail scalds(Outlet outlet, Limit most, double peak_C) {
    double most_C = limits.value(most);
    Stream<Told<?>> hottest =
        top.culprits(hot_C -> hot_C > most_C).stream().limit(1).map(TankTop.Source::setting);
    return Detail.at(Stream.concat(Stream.of(outlet.blended()), hottest).toArray(Told<?>[]::new))
        .observed(Measure.of("hottest it gives", peak_C, CELSIUS))
        .limit(Bound.of("most at that outlet", most_C, limits.of(most)))
        .size(KELVIN.round(peak_C - most_C))
        .evidence(top.evidence(peak_C))
        .done();
  }

  private void mixed(Outlet outlet) {
    Derived<Optional<Limit>> most = Derived.of(outlet.at()).map(OutletLadder::mostMixed);
    Derived<Double> mixed = Derived.of(outlet.mixed_C());
    cases
        .into(MixedOutlet.class, outlet.part().pointer())
        .where(isBlended(outlet), most.map(Optional::isPresent))
        .given(mixed, most)
        .makes(
            because -> {
              Limit limit = most.get().orElseThrow();
              return new MixedOutlet(
                  because.explained(() -> setTooHot(outlet, limit)),
                  mixed.get(),
                  limits.value(limit));
            });
  }

  private Detail setTooHot(Outlet outlet, Limit most) {
    double mixed_C = Derived.of(outlet.mixed_C()).get();
    double most_C = limits.value(most);
    return Detail.at(outlet.mixed_C())
        .observed(Measure.of("mixed temperature", mixed_C, CELSIUS))
        .limit(Bound.of("most at that outlet", most_C, limits.of(most)))
        .size(KELVIN.round(mixed_C - most_C))
        .evidence(TankTop.timeToBurn(mixed_C).stream().toArray(Measure[]::new))
        .cure(Change.of(outlet.mixed_C(), Dial.down_C(most_C)))
        .done();
  }

  /** What a mixing valve there may give; a kitchen tap has no stated maximum. */
  private static Optional<Limit> mostMixed(Kind kind) {
    return switch (kind) {
      case BATH -> Optional.of(Limit.OUTLET_BATH);
      case SHOWER -> Optional.of(Limit.OUTLET_SHOWER);
      case BASIN -> Optional.of(Limit.OUTLET_BASIN);
      case BIDET -> Optional.of(Limit.OUTLET_BIDET);
      case KITCHEN, OTHER -> Optional.empty();
    };
  }

  private static Limit mostOpen(Kind kind) {
    return mostMixed(kind).orElse(Limit.OUTLET_VULNERABLE);
  }
}
