package deadband.judging;

import deadband.dayrun.TestDays;
import deadband.days.DayEvidence;
import deadband.days.DayRuns;
import deadband.days.YearEffect;
import deadband.days.YearRuns;
import deadband.document.Pointer;
import deadband.facts.SiteWork;
import deadband.limits.Limits;
import deadband.setup.Change;
import deadband.setup.ChangeKind;
import deadband.setup.Setup;
import deadband.topics.Prohibited;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Tries changes to one setup: what they touch is judged again, and its days are run again where
 * they alter them. For any number of threads.
 */
public final class Trials {

  /** Moves no larger than this stay within what a sensor or a dial resolves: our own choice. */
  private static final double RESOLVED = 1;

  private static final double RESOLVED_KW = 0.05;

  /** Topics whose damage is a matter of how the relay runs through a year. */
  private static final Set<String> OF_THE_RELAY = Set.of("thresholds", "day");

  private static final Set<Pointer> EVERYDAY =
      Set.of(
          Pointer.ofDotted("heatPump.everyday.start_C"),
          Pointer.ofDotted("heatPump.everyday.stop_C"));

  private static final Pointer START = Pointer.ofDotted("relay.start_kW");

  private final Setup setup;
  private final Limits limits;
  private final Outcomes before;
  private final DayRuns runs;
  private final @Nullable YearRuns years;
  private final Function<Setup, Outcomes> judge;
  private final BiFunction<Setup, List<Check>, List<Finding>> withoutDays;
  private final Optional<TestDays> days;
  private final Map<List<Change>, Optional<Trial>> tried = new ConcurrentHashMap<>();
  private final Map<Finding.Key, List<Remedy>> offered = new ConcurrentHashMap<>();

  Trials(
      Setup setup,
      Limits limits,
      Outcomes before,
      DayRuns runs,
      @Nullable YearRuns years,
      Function<Setup, Outcomes> judge,
      BiFunction<Setup, List<Check>, List<Finding>> withoutDays) {
    this.setup = setup;
    this.limits = limits;
    this.before = before;
    this.runs = runs;
    this.years = years;
    this.judge = judge;
    this.withoutDays = withoutDays;
    this.days = DayEvidence.days(setup, runs);
  }

  Setup setup() {
    return setup;
  }

  Limits limits() {
    return limits;
  }

  Outcomes before() {
    return before;
  }

  /** The days of the setup; empty where none were run. */
  Optional<TestDays> days() {
    return days;
  }

  /**
   * What some checks find in another setup where no day is run for it; what else is found, and what
   * is found in this setup as well, may be among it.
   */
  List<Finding> withoutDays(Setup other, List<Check> some) {
    return withoutDays.apply(other, some);
  }

  /** Changes tried. */
  private record Trial(List<Change> changes, Setup changed, Outcomes after, Effect effect) {}

  /** The remedies of a finding that may be offered, the one to take first. */
  public List<Remedy> remedies(Finding finding) {
    return offered.computeIfAbsent(finding.key(), key -> tried(finding));
  }

  private List<Remedy> tried(Finding finding) {
    List<Trial> curing =
        finding.detail().cures().stream()
            .map(Trials::moving)
            .distinct()
            .filter(changes -> isWorthTrying(changes, finding))
            .flatMap(changes -> trial(changes).stream())
            .filter(trial -> trial.after().cures(finding, before))
            .toList();
    boolean ofYear = years != null && wantsYear(finding) && !curing.isEmpty();
    return Advice.ordered(
        (ofYear
                ? curing.parallelStream().map(this::overYear).filter(Trials::startsInTheYear)
                : curing.stream())
            .map(this::remedy)
            .toList(),
        finding.consequence());
  }

  /** The changes without those that leave a value as it is. */
  private static List<Change> moving(List<Change> changes) {
    return changes.stream().filter(change -> !change.to().equals(change.from())).toList();
  }

  /** The checks of hazards that could not be judged as the setup stands, by name. */
  public List<String> hazardsOpen() {
    return before.hazardsOpen();
  }

  /** What came of changes together; empty where they may not be offered. */
  public Optional<Proof> proof(List<Change> changes, boolean ofYear) {
    return trial(changes)
        .map(trial -> ofYear && years != null ? overYear(trial) : trial)
        .map(this::proof);
  }

  /**
   * The outcomes with a finding out of the way: by its remedy, else by the first of its cures that
   * takes it away, offered or not; empty where none does.
   */
  Optional<Outcomes> without(Finding finding) {
    if (!finding.remedies().isEmpty()) {
      return trial(finding.remedies().get(0).changes()).map(Trial::after);
    }
    return finding.detail().cures().stream()
        .filter(changes -> changes.stream().allMatch(change -> change.fits(setup)))
        .map(changes -> judge.apply(Change.all(changes, setup)))
        .filter(after -> after.cures(finding, before))
        .findFirst();
  }

  /** A query is neither silenced by everyday temperatures nor by a step across a tolerance. */
  private static boolean isWorthTrying(List<Change> changes, Finding finding) {
    boolean isFact =
        changes.stream().anyMatch(change -> ChangeKind.of(change.pointer()) == ChangeKind.FACT);
    if (changes.isEmpty() || isFact) {
      return false;
    }
    boolean asks = finding.consequence().compareTo(Consequence.QUERY) >= 0;
    return !asks
        || (changes.stream().noneMatch(change -> EVERYDAY.contains(change.pointer()))
            && !changes.stream().allMatch(Trials::isAStep));
  }

  private static boolean isAStep(Change change) {
    if (!(change.from() instanceof Double from) || !(change.to() instanceof Double to)) {
      return false;
    }
    double resolved = change.pointer().dotted().endsWith("_kW") ? RESOLVED_KW : RESOLVED;
    return Math.abs(to - from) < resolved - 1e-9;
  }

  private static boolean wantsYear(Finding finding) {
    return finding.consequence() == Consequence.WASTE
        || (finding.consequence() == Consequence.DAMAGE
            && OF_THE_RELAY.contains(finding.check().topic()));
  }

  private Optional<Trial> trial(List<Change> changes) {
    Optional<Trial> known = tried.get(changes);
    if (known == null) {
      known = attempted(changes);
      tried.put(changes, known);
    }
    return known;
  }

  private Optional<Trial> attempted(List<Change> changes) {
    if (!Prohibited.allows(changes, setup, limits, before.knowsStoreDisinfected())) {
      return Optional.empty();
    }
    Setup changed = Change.all(changes, setup);
    Effect effect = effect(changes, changed);
    if (!keepsStarting(changes, effect)) {
      return Optional.empty();
    }
    return Optional.of(new Trial(changes, changed, judge.apply(changed), effect));
  }

  /** The relay still starts the heat pump if it did; a start that is offered is reached. */
  private static boolean keepsStarting(List<Change> changes, Effect effect) {
    boolean moved = changes.stream().anyMatch(change -> change.pointer().equals(START));
    return effect.startsPump() || (!effect.startedPump() && (!moved || effect.closesRelay()));
  }

  private Effect effect(List<Change> changes, Setup changed) {
    Optional<TestDays> after = DayEvidence.days(changed, runs);
    boolean known =
        (days.isPresent() && after.isPresent())
            || !DayEvidence.concern(setup)
            || changes.stream().noneMatch(Trials::shapesDays);
    return new Effect(known, days, after, Optional.empty(), Optional.empty());
  }

  private static boolean shapesDays(Change change) {
    return ChangeKind.of(change.pointer()) == ChangeKind.SETTING;
  }

  private Trial overYear(Trial trial) {
    Optional<YearEffect> from = Objects.requireNonNull(years).of(setup);
    Optional<YearEffect> to = years.of(trial.changed());
    Effect ofDays = trial.effect();
    return new Trial(
        trial.changes(),
        trial.changed(),
        trial.after(),
        new Effect(ofDays.known(), ofDays.daysBefore(), ofDays.daysAfter(), from, to));
  }

  /** A year in which the relay never starts the heat pump is no remedy, unless it never did. */
  private static boolean startsInTheYear(Trial trial) {
    boolean moved = trial.changes().stream().anyMatch(change -> change.pointer().equals(START));
    return trial.effect().startsInTheYear() || !(moved || trial.effect().startedInTheYear());
  }

  private Remedy remedy(Trial trial) {
    return new Remedy(trial.changes(), SiteWork.of(trial.changes(), setup), proof(trial));
  }

  private Proof proof(Trial trial) {
    Outcomes after = trial.after();
    return new Proof(
        before.raisedSince(after),
        after.raisedSince(before),
        after.enlargedSince(before),
        after.openedSince(before),
        after.hazardsOpen(),
        trial.effect());
  }

  /**
   * Remedies of many findings of one check, tried together so that a long list does not take long.
   */
  List<Finding> together(List<Finding> findings) {
    List<Change> all = new ArrayList<>();
    findings.forEach(finding -> all.addAll(firstOf(finding)));
    Optional<Trial> trial = all.isEmpty() ? Optional.empty() : trial(List.copyOf(all));
    if (trial.isEmpty()) {
      return findings;
    }
    Proof proof = proof(trial.get());
    Outcomes after = trial.get().after();
    return findings.stream()
        .map(
            finding ->
                firstOf(finding).isEmpty() || !after.cures(finding, before)
                    ? finding
                    : finding.curedBy(
                        List.of(
                            new Remedy(
                                firstOf(finding), SiteWork.of(firstOf(finding), setup), proof))))
        .toList();
  }

  private static List<Change> firstOf(Finding finding) {
    return finding.detail().cures().stream()
        .filter(changes -> isWorthTrying(changes, finding))
        .findFirst()
        .orElse(List.of());
  }
}
