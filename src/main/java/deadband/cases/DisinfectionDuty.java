package deadband.cases;

import static deadband.setup.Unit.CELSIUS;

import deadband.setup.CountryCode;
import deadband.setup.Disinfection;
import deadband.setup.Disinfection.Heater;
import deadband.setup.Setup;
import deadband.setup.Site;
import deadband.setup.Told;
import deadband.setup.Unit;
import deadband.trade.DisinfectionCycle;
import java.util.Optional;

/**
 * What the cases about the disinfection of the store share: whether a programme runs and with what
 * heater, whether the store needs it, and the cycle that it is held to.
 */
final class DisinfectionDuty {

  private final Setup setup;
  private final Limits limits;
  private final Disinfection programme;

  DisinfectionDuty(Setup setup, Limits limits) {
    this.setup = setup;
    this.limits = limits;
    this.programme = setup.heatPump().disinfection();
  }

  Derived<Boolean> heatPumpFitted() {
    return Derived.of(setup.heatPump().part().isFitted());
  }

  /**
   * Whether the everyday programme lets the store fall below the temperature that needs no cycle.
   */
  Derived<Boolean> restsCool() {
    double hot_C = limits.value(Limit.DISINFECTION_TEMPERATURE);
    double kept_C = cycle().isKnown() ? cycle().get().keptHot_C(hot_C) : hot_C;
    return Derived.of(setup.heatPump().everyday().start_C()).map(start -> start < kept_C);
  }

  /** Whether a programme runs, with a heater to carry it. */
  Derived<Boolean> runs() {
    return Derived.all(
        Derived.of(programme.enabled()),
        Derived.of(programme.heater()).map(heater -> heater != Heater.NONE));
  }

  Derived<Boolean> runsOn(Heater heater) {
    return Derived.all(
        Derived.of(programme.enabled()),
        Derived.of(programme.heater()).map(told -> told == heater));
  }

  /** The cycle the site is held to: the one chosen for it, else its country's. */
  Derived<DisinfectionCycle> cycle() {
    Told<Site.DisinfectionCycle> chosen = setup.site().disinfectionCycle();
    if (chosen.isTold()) {
      return Derived.of(chosen).map(cycle -> DisinfectionCycle.named(cycle.word()).orElseThrow());
    }
    return Derived.of(setup.site().country()).then(this::cycleOf);
  }

  /** Where no cycle is known for a country, the one to be held to must be chosen. */
  private Derived<DisinfectionCycle> cycleOf(CountryCode country) {
    return DisinfectionCycle.inHomesOf(country.code())
        .map(Derived::constant)
        .orElseGet(() -> Derived.missing(setup.site().disinfectionCycle().pointer()));
  }

  /** Whether the cycle speaks of a store of this volume. */
  Derived<Boolean> asked() {
    return cycle()
        .then(
            cycle ->
                cycle.leastVolume_L() == 0
                    ? Derived.constant(true)
                    : Derived.of(setup.tank().volume_L()).map(cycle::speaksOf));
  }

  /** Whether a cycle is known well enough to carry a hazard. */
  static boolean isFirm(DisinfectionCycle cycle) {
    return bound(cycle, "", 0, Unit.NONE).firm();
  }

  /** A limit that the cycle sets. */
  static Bound bound(DisinfectionCycle cycle, String quantity, double value, Unit unit) {
    return Bound.sourced(
        Measure.of(quantity, value, unit), cycle.name(), cycle.source(), cycle.known());
  }

  /** How far the store stays below the target that it is never brought to; 0 where not told. */
  double missed_K() {
    Optional<Double> everyday = setup.heatPump().everyday().stop_C().optional();
    Optional<Double> target = programme.target_C().optional();
    return everyday.isPresent() && target.isPresent()
        ? CELSIUS.round(Math.max(0, target.get() - everyday.get()))
        : 0;
  }
}
