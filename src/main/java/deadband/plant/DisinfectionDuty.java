package deadband.plant;

import static deadband.setup.Unit.CELSIUS;

import deadband.document.Pointer;
import deadband.facts.Bound;
import deadband.facts.Measure;
import deadband.facts.Size;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.provenance.Derived;
import deadband.setup.CountryCode;
import deadband.setup.Disinfection;
import deadband.setup.Disinfection.Heater;
import deadband.setup.Entered;
import deadband.setup.Part;
import deadband.setup.Setup;
import deadband.setup.Unit;
import deadband.trade.DecimalReduction;
import deadband.trade.DisinfectionCycle;
import java.util.List;
import java.util.Optional;

/**
 * What the facts about the disinfection of the store share: whether a programme runs and with what
 * heater, whether the store needs it, and the cycle that it is held to.
 */
public final class DisinfectionDuty {

  private final Setup setup;
  private final Limits limits;
  private final Disinfection programme;
  private final EverydayHeat everyday;

  public DisinfectionDuty(Setup setup, Limits limits) {
    this.setup = setup;
    this.limits = limits;
    this.programme = setup.heatPump().disinfection();
    this.everyday = new EverydayHeat(setup, limits);
  }

  public Derived<Boolean> heatPumpFitted() {
    return Derived.of(setup.heatPump().part().isFitted());
  }

  /**
   * Whether the everyday programme lets the store fall below the temperature that needs no cycle:
   * by its start, or because it hardly runs.
   */
  public Derived<Boolean> restsCool() {
    double hot_C = limits.value(Limit.DISINFECTION_TEMPERATURE);
    double kept_C = cycle().isKnown() ? cycle().get().keptHot_C(hot_C) : hot_C;
    return Derived.any(restsBelow(kept_C), Derived.not(everyday.keepsStart()));
  }

  public Derived<Boolean> restsBelow(double kept_C) {
    return Derived.of(setup.heatPump().everyday().start_C()).map(start -> start < kept_C);
  }

  /** Whether a programme runs, with a heater that is there to carry it. */
  public Derived<Boolean> runs() {
    return Derived.all(
        Derived.of(programme.enabled()),
        Derived.of(programme.heater()).map(heater -> heater != Heater.NONE),
        heaterIsFitted());
  }

  public Derived<Boolean> heaterIsFitted() {
    return Derived.of(programme.heater()).then(heater -> Derived.of(partOf(heater).isFitted()));
  }

  /** The part that must be there for a heater to heat; the programme's own where none is named. */
  private Part partOf(Heater heater) {
    return switch (heater) {
      case IMMERSION -> setup.immersion().part();
      case BACKUP_HEATER -> setup.heatPump().backupHeater().part();
      case HEAT_PUMP, SURPLUS, NONE -> setup.heatPump().part();
    };
  }

  /** What a programme is worth against the cycles of every country. */
  public enum Worth {
    /** It keeps the numbers of one of them. */
    ENOUGH,
    /** It kills, but less or less often than any of them asks. */
    SHORT,
    /** It disinfects nothing, or does not run. */
    NOTHING
  }

  public Derived<Worth> worth() {
    Derived<Boolean> runs = runs();
    if (runs.is(is -> !is)) {
      return runs.map(is -> Worth.NOTHING);
    }
    Derived<Double> target = Derived.of(programme.target_C());
    if (runs.isKnown() && target.is(to_C -> to_C < DecimalReduction.LEAST_CREDITED_C)) {
      return target.map(to_C -> Worth.NOTHING);
    }
    return runs.then(
        is ->
            target.with(
                Derived.of(programme.hold_min())
                    .with(Derived.of(programme.every_days()), Rhythm::new),
                this::worth));
  }

  private record Rhythm(double hold_min, double every_days) {}

  private Worth worth(double target_C, Rhythm rhythm) {
    if (DisinfectionCycle.isKnownToDo(target_C, rhythm.hold_min(), rhythm.every_days())) {
      return Worth.ENOUGH;
    }
    boolean kills = DisinfectionCycle.kills(target_C, rhythm.hold_min());
    boolean everAgain = rhythm.every_days() <= limits.value(Limit.DISINFECTION_FORGOTTEN);
    return kills && everAgain ? Worth.SHORT : Worth.NOTHING;
  }

  /** The values by which nothing disinfects the store. */
  public List<Pointer> culprits() {
    if (programme.enabled().says(false)) {
      return List.of(programme.enabled().pointer());
    }
    if (runs().is(is -> !is)) {
      Entered<Boolean> fitted =
          partOf(programme.heater().optional().orElse(Heater.NONE)).isFitted();
      return fitted.says(false)
          ? List.of(programme.heater().pointer(), fitted.pointer())
          : List.of(programme.heater().pointer());
    }
    return programme.enabled().isEntered() && programme.target_C().isEntered()
        ? List.of(
            programme.target_C().pointer(),
            programme.hold_min().pointer(),
            programme.every_days().pointer())
        : List.of(programme.enabled().pointer());
  }

  public Derived<Boolean> runsOn(Heater heater) {
    return Derived.all(
        Derived.of(programme.enabled()),
        Derived.of(programme.heater()).map(entered -> entered == heater));
  }

  /**
   * The cycle the site is held to: its country's, or common practice where the country has none;
   * one chosen for it where that is made for the country, asks for no less, or where the country
   * has none.
   */
  public Derived<DisinfectionCycle> cycle() {
    Derived<CountryCode> country = Derived.of(setup.site().country());
    return setup.site().disinfectionCycle().isEntered()
        ? chosen().then(cycle -> governing(cycle, country))
        : country.map(DisinfectionDuty::cycleOf);
  }

  private Derived<DisinfectionCycle> governing(
      DisinfectionCycle chosen, Derived<CountryCode> country) {
    return country.isKnown()
        ? country.map(
            in -> ownOf(in).filter(own -> !chosen.canReplace(own, in.code())).orElse(chosen))
        : Derived.constant(chosen);
  }

  /** The cycle of a country, where it speaks of a store of this volume. */
  private Optional<DisinfectionCycle> ownOf(CountryCode country) {
    Optional<Double> volume_L = setup.tank().volume_L().optional();
    return DisinfectionCycle.inHomesOf(country.code())
        .filter(own -> volume_L.isEmpty() || own.speaksOf(volume_L.get()));
  }

  /** The cycle that is chosen in the setup. */
  public Derived<DisinfectionCycle> chosen() {
    return Derived.of(setup.site().disinfectionCycle())
        .map(cycle -> DisinfectionCycle.named(cycle.word()).orElseThrow());
  }

  /** Whether the chosen cycle is one for this store in this country. */
  public Derived<Boolean> chosenCovers() {
    return chosen()
        .then(
            chosen ->
                Derived.all(
                    Derived.of(setup.site().country())
                        .map(
                            in ->
                                !ownOf(in)
                                    .map(own -> !chosen.canReplace(own, in.code()))
                                    .orElse(false)),
                    speaksOf(chosen)));
  }

  /** The cycle of a country; common practice where none is known for it. */
  private static DisinfectionCycle cycleOf(CountryCode country) {
    return DisinfectionCycle.inHomesOf(country.code()).orElse(DisinfectionCycle.COMMON_PRACTICE);
  }

  /** Whether the cycle speaks of a store of this volume. */
  public Derived<Boolean> asked() {
    return cycle().then(this::speaksOf);
  }

  /** Of how much water a tank that is not there would hold, nothing is taken: it is asked for. */
  private Derived<Boolean> speaksOf(DisinfectionCycle cycle) {
    Derived<Boolean> tank = Derived.notAbsent(setup.tank().part());
    if (tank.is(there -> !there)) {
      return tank.map(none -> true);
    }
    return cycle.leastVolume_L() == 0
        ? Derived.constant(true)
        : Derived.of(setup.tank().volume_L()).map(cycle::speaksOf);
  }

  /** Whether a cycle is known well enough to carry a hazard. */
  public static boolean isFirm(DisinfectionCycle cycle) {
    return bound(cycle, "", 0, Unit.NONE).firm();
  }

  /** A limit that the cycle sets. */
  public static Bound bound(DisinfectionCycle cycle, String quantity, double value, Unit unit) {
    return Bound.sourced(
        Measure.of(quantity, value, unit), cycle.name(), cycle.source(), cycle.known());
  }

  /** How far the store stays below the target that it is never brought to; 0 where not entered. */
  public double missed_K() {
    Optional<Double> everyday = setup.heatPump().everyday().stop_C().optional();
    Optional<Double> target = programme.target_C().optional();
    return everyday.isPresent() && target.isPresent()
        ? CELSIUS.round(Math.max(0, target.get() - everyday.get()))
        : 0;
  }

  /** The same as a size; where it is not known, the disinfection is missing altogether. */
  public Size missed() {
    double missed_K = missed_K();
    return missed_K > 0 ? Size.kelvin(missed_K) : Size.WHOLE;
  }
}
