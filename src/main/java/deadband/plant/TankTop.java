package deadband.plant;

import static deadband.setup.Unit.CELSIUS;

import deadband.document.Pointer;
import deadband.facts.Measure;
import deadband.loop.TankLimit;
import deadband.provenance.Derived;
import deadband.provenance.Provenance;
import deadband.setup.Change;
import deadband.setup.Disinfection;
import deadband.setup.Entered;
import deadband.setup.Setup;
import deadband.trade.Scald;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The hottest that its controls let the tank become: the highest of the diverter's opening, the
 * stops of the heat pump's programmes and the disinfection target, each with the tolerance of its
 * sensor, and of the immersion thermostat where nothing else governs that heater.
 *
 * <p>One setting that is entered can prove the tank too hot; only all of them together prove that
 * it is not.
 */
public final class TankTop {

  private static final double DIAL_STEP_K = 0.5;

  private final Setup setup;
  private final SensorTolerance tolerance;
  private final TankLimit limit;
  private final List<Source> sources = new ArrayList<>();

  public TankTop(Setup setup) {
    this(setup, new SensorTolerance(setup));
  }

  /** The same by the values set alone, without the tolerance of the sensors. */
  public static TankTop nominal(Setup setup) {
    return new TankTop(setup, SensorTolerance.none(setup));
  }

  private TankTop(Setup setup, SensorTolerance tolerance) {
    this.setup = setup;
    this.tolerance = tolerance;
    this.limit = new TankLimit(setup);
    addDiverter();
    addHeatPump();
    addImmersion();
  }

  /**
   * One control that heats the tank.
   *
   * @param name of its setting
   * @param setting the value entered
   * @param start where its programme starts, null where it has none
   * @param set_C the setting, where it is sure to be in force
   * @param surely_C what the tank is sure to reach by it
   * @param atMost_C what the tank may reach by it
   * @param gap values not entered without which what it may reach is not sure
   */
  public record Source(
      String name,
      Entered<Double> setting,
      Optional<Entered<Double>> start,
      Derived<Double> set_C,
      Derived<Double> surely_C,
      Derived<Double> atMost_C,
      List<Pointer> gap) {

    public boolean mayBe(Predicate<Double> tooHot) {
      return surely_C.is(tooHot) || atMost_C.is(tooHot);
    }

    public double hottest_C() {
      return Derived.highestKnown(List.of(surely_C, atMost_C)).get();
    }

    /** The changes that keep it at or below a temperature, and its setting below. */
    public List<Change> loweredTo(double most_C) {
      double set_C = setting.optional().orElseThrow();
      double dial_C = Dial.down_C(CELSIUS.round(most_C - (hottest_C() - set_C)));
      double lower_C = dial_C < most_C ? dial_C : dial_C - DIAL_STEP_K;
      List<Change> changes = new ArrayList<>(List.of(Change.of(setting, lower_C)));
      start
          .filter(entered -> entered.optional().filter(start_C -> start_C >= lower_C).isPresent())
          .ifPresent(
              entered ->
                  changes.add(
                      Change.of(entered, lower_C - set_C + entered.optional().orElseThrow())));
      return changes;
    }
  }

  /**
   * What may be said of the hottest the tank gets.
   *
   * @param peak_C the hottest it is sure to get where that is too hot already, else the hottest it
   *     may get
   * @param openIfFound values not entered without which too hot is not proven
   * @param openIfClear values not entered without which not too hot is not proven
   */
  public record Reading(
      Derived<Double> peak_C, List<Pointer> openIfFound, List<Pointer> openIfClear) {}

  /** Whether anything is fitted that heats the tank. */
  public Derived<Boolean> fitted() {
    return Derived.any(
        Derived.of(setup.diverter().part().isFitted()),
        Derived.of(setup.heatPump().part().isFitted()),
        Derived.of(setup.immersion().part().isFitted()));
  }

  /** The highest temperature that is set and entered. */
  public Derived<Double> setPoint_C() {
    return Derived.highestKnown(sources.stream().map(Source::set_C).toList());
  }

  /** The hottest the tank is sure to get. */
  public Derived<Double> surely_C() {
    return Derived.highestKnown(sources.stream().map(Source::surely_C).toList());
  }

  /** The hottest the tank gets, held against what is too hot. */
  public Reading against(Predicate<Double> tooHot) {
    Derived<Double> surely = surely_C();
    if (surely.is(tooHot)) {
      return new Reading(surely, List.of(), List.of());
    }
    List<Derived<Double>> atMost = sources.stream().map(Source::atMost_C).toList();
    return new Reading(Derived.highestKnown(atMost), gap(tooHot), Derived.missingOf(atMost));
  }

  private List<Pointer> gap(Predicate<Double> tooHot) {
    List<Pointer> gap = List.of();
    for (Source source : sources) {
      if (source.atMost_C().is(tooHot)) {
        if (source.gap().isEmpty()) {
          return List.of();
        }
        gap = Provenance.union(gap, source.gap());
      }
    }
    return gap;
  }

  /** The settings by which it may get too hot, the hottest first. */
  public List<Source> culprits(Predicate<Double> tooHot) {
    return sources.stream()
        .filter(source -> source.mayBe(tooHot))
        .sorted(Comparator.comparing(source -> -source.hottest_C()))
        .toList();
  }

  /** What is set, and how soon water of a temperature burns. */
  public Measure[] evidence(double peak_C) {
    List<Measure> evidence = new ArrayList<>();
    for (Source source : sources) {
      if (source.set_C().isKnown()) {
        evidence.add(Measure.of(source.name(), source.set_C().get(), CELSIUS));
      }
    }
    if (limit.opening_C().isKnown()) {
      evidence.add(Measure.of("diverter opens at", limit.opening_C().get(), CELSIUS));
    }
    timeToBurn(peak_C).ifPresent(evidence::add);
    return evidence.toArray(new Measure[0]);
  }

  /** Time that water of a temperature takes to burn, where one is stated. */
  public static Optional<Measure> timeToBurn(double water_C) {
    String quantity =
        Scald.isAtMost(water_C) ? "maximum time to a serious burn" : "time to a serious burn";
    return Scald.RANGE_C.holds(water_C)
        ? Optional.of(Measure.of(quantity, Scald.timeToBurn_s(water_C), "s"))
        : Optional.empty();
  }

  private void addDiverter() {
    boolean unlimited = !senses() && !setup.diverter().limit_C().isEntered();
    if (setup.diverter().part().isFitted().says(false) || unlimited) {
      return;
    }
    Derived<Double> lowest = limit.lowestOpening_C();
    Derived<Double> highest = limit.highestOpening_C();
    sources.add(
        new Source(
            "tank limit",
            setup.diverter().limit_C(),
            Optional.empty(),
            limit.limit_C(),
            SensorTolerance.surely_C(lowest, tolerance.diverter_K(lowest)),
            Derived.sum(CELSIUS, highest, tolerance.diverter_K(highest)),
            limit.open()));
  }

  private void addHeatPump() {
    if (setup.heatPump().part().isFitted().says(false)) {
      return;
    }
    for (Programmes.Named named : new Programmes(setup).all()) {
      if (!named.used().is(used -> !used)) {
        addProgramme(named);
      }
    }
    Disinfection disinfection = setup.heatPump().disinfection();
    if (!disinfection.enabled().says(false)) {
      addDisinfection(disinfection);
    }
  }

  private void addProgramme(Programmes.Named named) {
    Derived<Double> stop = Derived.of(named.programme().stop_C());
    Derived<Double> either = tolerance.heatPump_K(stop);
    sources.add(
        new Source(
            named.name() + " stop",
            named.programme().stop_C(),
            Optional.of(named.programme().start_C()),
            stop,
            SensorTolerance.surely_C(stop, either),
            Derived.sum(CELSIUS, stop, either),
            List.of()));
  }

  private void addDisinfection(Disinfection disinfection) {
    Derived<Double> target = Derived.of(disinfection.target_C());
    Derived<Double> inForce = Derived.of(disinfection.enabled()).then(enabled -> target);
    Derived<Double> either = tolerance.heatPump_K(target);
    sources.add(
        new Source(
            "disinfection target",
            disinfection.target_C(),
            Optional.empty(),
            inForce,
            SensorTolerance.surely_C(inForce, either),
            Derived.sum(CELSIUS, target, either),
            Derived.of(disinfection.enabled()).provenance().missing()));
  }

  private void addImmersion() {
    Entered<Double> setting = setup.immersion().thermostat_C();
    Derived<Boolean> governs = thermostatGoverns();
    if (governs.is(is -> !is)) {
      return;
    }
    Derived<Double> thermostat = Derived.of(setting);
    Derived<Double> inForce = governs.then(is -> thermostat);
    sources.add(
        new Source(
            "immersion thermostat",
            setting,
            Optional.empty(),
            inForce,
            inForce,
            thermostat.isKnown() ? thermostat : governs.with(thermostat, (is, opens) -> opens),
            governs.provenance().missing()));
  }

  /**
   * A timer feeds the element past every other control; a diverter without a sensor, or with one
   * that sits below the element, never reaches its limit; alone, the element has no other control.
   */
  private Derived<Boolean> thermostatGoverns() {
    return Derived.all(
        Derived.of(setup.immersion().part().isFitted()),
        Derived.any(
            diverterIsBlind(),
            Derived.of(setup.immersion().timed()).map(windows -> !windows.isEmpty()),
            Derived.all(
                Derived.not(Derived.of(setup.diverter().part().isFitted())),
                Derived.not(Derived.of(setup.heatPump().part().isFitted())))));
  }

  private Derived<Boolean> diverterIsBlind() {
    Derived<Boolean> below =
        Derived.of(setup.diverter().sensor().height_mm())
            .with(Derived.of(setup.immersion().height_mm()), (sensor, element) -> sensor < element);
    return Derived.all(
        Derived.of(setup.diverter().part().isFitted()).or(Derived.constant(false)),
        senses() ? below.or(Derived.constant(false)) : Derived.constant(true));
  }

  /** Whether the diverter may have a tank sensor. */
  private boolean senses() {
    return !setup.diverter().sensor().part().isFitted().says(false);
  }
}
