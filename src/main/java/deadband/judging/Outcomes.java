package deadband.judging;

import deadband.dayrun.TestDays;
import deadband.document.Pointer;
import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Condition;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Presence;
import deadband.limits.LimitOverride;
import deadband.provenance.Assumption;
import deadband.provenance.Provenance;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What each check came to on one setup, before acceptances.
 *
 * <p>A check is <em>found</em> where a rule fires on a case that is sure to arise; <em>not
 * judged</em> where a value is missing that could change the answer; <em>clear</em> where no case
 * violates it, <em>clear on an assumption</em> where that rests on a default; <em>not fitted</em>
 * where the thing it is about is not there. A hazard is never cleared by a default.
 */
final class Outcomes {

  private static final Outcome NOT_FITTED = new Outcome.NotFitted();
  private static final Outcome CLEAR = new Outcome.Clear(List.of());

  /** By name. */
  private final List<Checked> checks;

  /** What was found or left open. */
  private final Set<Finding.Key> loud = new HashSet<>();

  private final List<Finding> findings = new ArrayList<>();
  private final Map<Finding.Key, Finding> found = new LinkedHashMap<>();

  private Outcomes(List<Checked> checks) {
    this.checks = checks;
    checks.forEach(this::count);
  }

  private void count(Checked checked) {
    for (Outcome outcome : checked.outcomes) {
      Pointer subject = subject(outcome);
      if (subject != null) {
        loud.add(new Finding.Key(checked.check.name(), subject));
      }
      if (outcome instanceof Outcome.Found with) {
        findings.add(with.finding());
        found.put(with.finding().key(), with.finding());
      }
    }
  }

  /** What one check came to on each of its cases. */
  private record Checked(Check check, List<Outcome> outcomes) {

    boolean isLoud() {
      for (Outcome outcome : outcomes) {
        if (subject(outcome) != null) {
          return true;
        }
      }
      return false;
    }

    boolean isNotFitted() {
      for (Outcome outcome : outcomes) {
        if (!(outcome instanceof Outcome.NotFitted)) {
          return false;
        }
      }
      return true;
    }

    /** The values for want of which a case was not judged; null where all were. */
    @Nullable List<Pointer> missing() {
      TreeSet<Pointer> missing = null;
      for (Outcome outcome : outcomes) {
        if (outcome instanceof Outcome.Open open) {
          missing = missing == null ? new TreeSet<>() : missing;
          missing.addAll(open.missing());
        }
      }
      return missing == null ? null : List.copyOf(missing);
    }

    /** The defaults on which a case is clear, by pointer. */
    List<Assumption> assumed() {
      List<Assumption> assumed = List.of();
      for (Outcome outcome : outcomes) {
        if (outcome instanceof Outcome.Clear clear && !clear.assumed().isEmpty()) {
          assumed = Provenance.union(assumed, clear.assumed());
        }
      }
      return assumed;
    }

    <T extends Outcome> List<T> of(Class<T> kind) {
      return outcomes.stream().filter(kind::isInstance).map(kind::cast).toList();
    }
  }

  /**
   * The outcomes of some of the checks.
   *
   * @param matches what the rules matched in these facts
   * @throws IllegalStateException where nothing was said of a case that one of them looks at
   */
  static Outcomes of(Matches.Read matches, List<Check> checks, Facts facts) {
    Map<Class<? extends Case>, List<Facts.Entry>> byType = new HashMap<>();
    for (Facts.Entry entry : facts.entries()) {
      byType.computeIfAbsent(entry.type(), type -> new ArrayList<>(2)).add(entry);
    }
    Set<Class<?>> absent = new HashSet<>();
    for (Condition condition : facts.conditions()) {
      if (condition instanceof Presence thing && thing.isAbsent()) {
        absent.add(condition.getClass());
      }
    }
    List<Checked> checked = new ArrayList<>(checks.size());
    for (Check check : checks) {
      List<Facts.Entry> concerned = byType.getOrDefault(check.caseType(), List.of());
      if (concerned.isEmpty()) {
        throw new IllegalStateException("no case was derived for " + check.name());
      }
      boolean fitted = Collections.disjoint(absent, check.conditions());
      List<Outcome> outcomes = new ArrayList<>(concerned.size());
      for (Facts.Entry entry : concerned) {
        outcomes.add(fitted ? outcome(check, entry, matches) : NOT_FITTED);
      }
      checked.add(new Checked(check, outcomes));
    }
    return new Outcomes(checked);
  }

  /** What one check came to on one case. */
  sealed interface Outcome {
    record Found(Finding finding) implements Outcome {}

    record Open(Pointer subject, List<Pointer> missing) implements Outcome {}

    record Clear(List<Assumption> assumed) implements Outcome {}

    record NotFitted() implements Outcome {}
  }

  private static Outcome outcome(Check check, Facts.Entry entry, Matches.Read matches) {
    return switch (entry.standing()) {
      case NOT_FITTED -> NOT_FITTED;
      case NOT_KNOWN -> new Outcome.Open(entry.subject(), entry.provenance().missing());
      case PUT -> judged(check, Objects.requireNonNull(entry.fact()), matches);
    };
  }

  private static Outcome judged(Check check, Case fact, Matches.Read matches) {
    Optional<Match> loosely = matches.withoutDefaults().of(check.name(), fact);
    if (loosely.isEmpty()) {
      return CLEAR;
    }
    Evidence evidence = fact.evidence();
    Optional<Match> surely = matches.surely().of(check.name(), fact);
    if (surely.isPresent() && !evidence.unproven()) {
      return new Outcome.Found(finding(check, evidence, surely.get().provenance()));
    }
    Optional<Match> atBest = matches.atBest().of(check.name(), fact);
    return atBest.isPresent()
        ? new Outcome.Open(evidence.subject(), missing(evidence, atBest.get().missing()))
        : clear(check, evidence.subject(), loosely.get().assumed());
  }

  /** What else could decide is asked for once the case's own values are entered. */
  private static List<Pointer> missing(Evidence evidence, List<Pointer> joined) {
    if (Provenance.all(evidence.behind()).isIncomplete()) {
      return joined;
    }
    TreeSet<Pointer> missing = new TreeSet<>(joined);
    missing.addAll(evidence.openIfFound());
    missing.addAll(evidence.openIfClear());
    return List.copyOf(missing);
  }

  private static Outcome clear(Check check, Pointer subject, List<Assumption> assumed) {
    if (check.consequence() == Consequence.HAZARD && !assumed.isEmpty()) {
      return new Outcome.Open(subject, assumed.stream().map(Assumption::pointer).toList());
    }
    return assumed.isEmpty() ? CLEAR : new Outcome.Clear(assumed);
  }

  private static Finding finding(Check check, Evidence evidence, Provenance provenance) {
    Detail given = detail(check, evidence);
    Detail detail = check.isHouse() ? given.unlimited() : given;
    return new Finding(
        check,
        consequence(check, provenance, detail.limit()),
        evidence.subject(),
        detail,
        provenance);
  }

  private static Detail detail(Check check, Evidence evidence) {
    try {
      return evidence.detail().get();
    } catch (RuntimeException fault) {
      throw new CheckFault(check.name(), fault);
    }
  }

  /**
   * Hazard, damage and waste only on a firm limit; a hazard, and what a day run shows, only on what
   * is entered; else the same finding is a question.
   */
  private static Consequence consequence(
      Check check, Provenance provenance, @Nullable Bound limit) {
    boolean sure = !check.askedOnAssumption() || !provenance.restsOnDefaults();
    boolean firm = limit == null || limit.firm();
    return check.consequence().blocksSignOff() && !(sure && firm)
        ? Consequence.QUERY
        : check.consequence();
  }

  List<Finding> findings() {
    return Collections.unmodifiableList(findings);
  }

  /** Whether a check is silent about a subject: neither found nor open. */
  boolean isSilent(Finding finding) {
    return !loud.contains(finding.key());
  }

  /** What was found, or left open, on a subject; null where an outcome is silent. */
  private static @Nullable Pointer subject(Outcome outcome) {
    if (outcome instanceof Outcome.Found found) {
      return found.finding().subject();
    }
    return outcome instanceof Outcome.Open open ? open.subject() : null;
  }

  /** The findings by check and subject. */
  Map<Finding.Key, Finding> found() {
    return found;
  }

  /**
   * Whether a change that led here cured a finding: it is gone, and nothing of its class or worse
   * came in its place.
   *
   * @param before the outcomes without the change
   */
  boolean cures(Finding finding, Outcomes before) {
    return isSilent(finding)
        && found().values().stream()
            .filter(other -> !before.found().containsKey(other.key()))
            .noneMatch(other -> other.consequence().compareTo(finding.consequence()) <= 0);
  }

  /** The checks that find something here which they did not find before, by name. */
  List<String> raisedSince(Outcomes before) {
    return named(
        found().values().stream()
            .filter(finding -> !before.found().containsKey(finding.key()))
            .map(Finding::check));
  }

  /** The checks whose findings were there before and are worse or larger now, by name. */
  List<String> enlargedSince(Outcomes before) {
    return named(
        found().values().stream()
            .filter(
                finding -> finding.isWorseThan(before.found().getOrDefault(finding.key(), finding)))
            .map(Finding::check));
  }

  /** The checks of which something is open here that was judged before, by name. */
  List<String> openedSince(Outcomes before) {
    Set<Check> open = new HashSet<>();
    before.notJudged().forEach(check -> open.add(check.check()));
    return named(notJudged().stream().map(NotJudged::check).filter(check -> !open.contains(check)));
  }

  /** The checks of hazards of which something could not be judged, by name. */
  List<String> hazardsOpen() {
    return named(
        notJudged().stream()
            .map(NotJudged::check)
            .filter(check -> check.consequence() == Consequence.HAZARD));
  }

  private static List<String> named(Stream<Check> checks) {
    return checks.map(Check::name).distinct().sorted().toList();
  }

  /**
   * Whether it is known that the store is disinfected: every check of a hazard about it was made
   * and found nothing.
   */
  boolean knowsStoreDisinfected() {
    return checks.stream()
        .filter(checked -> isAboutDisinfection(checked.check))
        .noneMatch(Checked::isLoud);
  }

  private static boolean isAboutDisinfection(Check check) {
    return check.consequence() == Consequence.HAZARD
        && (check.topic().equals("disinfection")
            || check.name().contains("disinfect")
            || check.name().equals("store-in-growth-band"));
  }

  /** These outcomes, and in place of those of some checks others. */
  Outcomes with(Outcomes others) {
    Map<String, Checked> anew = new HashMap<>();
    others.checks.forEach(checked -> anew.put(checked.check.name(), checked));
    List<Checked> all = new ArrayList<>(checks.size());
    checks.forEach(checked -> all.add(anew.getOrDefault(checked.check.name(), checked)));
    return new Outcomes(all);
  }

  /** These outcomes and those of other checks. */
  Outcomes and(Outcomes others) {
    List<Checked> both = new ArrayList<>(checks);
    both.addAll(others.checks);
    both.sort(Comparator.comparing(checked -> checked.check.name()));
    return new Outcomes(both);
  }

  /**
   * These outcomes, and what the rule book's limits alone make of the hazards: what they find, as a
   * query, and what they cannot judge.
   *
   * @param strict the outcomes by the rule book's limits
   * @param weakened what lets more of a hazard pass here
   */
  Outcomes keeping(Outcomes strict, List<LimitOverride> weakened) {
    Map<String, Checked> there = new HashMap<>();
    strict.checks.forEach(checked -> there.put(checked.check.name(), checked));
    return new Outcomes(
        checks.stream()
            .map(
                here ->
                    here.check.consequence() == Consequence.HAZARD
                        ? keeping(here, there.getOrDefault(here.check.name(), here), weakened)
                        : here)
            .toList());
  }

  private static boolean concerns(Outcome outcome, Pointer subject) {
    return subject.equals(subject(outcome));
  }

  private static Checked keeping(Checked here, Checked there, List<LimitOverride> weakened) {
    List<Outcome> kept = new ArrayList<>(here.outcomes);
    for (Outcome.Found found : there.of(Outcome.Found.class)) {
      Finding finding = found.finding();
      if (here.outcomes.stream().noneMatch(outcome -> finds(outcome, finding))) {
        kept.removeIf(outcome -> concerns(outcome, finding.subject()));
        kept.add(new Outcome.Found(finding.passedBy(weakened)));
      }
    }
    for (Outcome.Open open : there.of(Outcome.Open.class)) {
      if (kept.stream().noneMatch(outcome -> concerns(outcome, open.subject()))) {
        kept.add(open);
      }
    }
    return new Checked(here.check, kept);
  }

  /** Whether an outcome finds the same, and no more mildly. */
  private static boolean finds(Outcome outcome, Finding finding) {
    return outcome instanceof Outcome.Found found
        && found.finding().subject().equals(finding.subject())
        && found.finding().consequence().compareTo(finding.consequence()) <= 0;
  }

  /** The checks of which something could not be judged, by name. */
  List<NotJudged> notJudged() {
    List<NotJudged> open = new ArrayList<>();
    for (Checked checked : checks) {
      List<Pointer> missing = checked.missing();
      if (missing != null) {
        open.add(new NotJudged(checked.check, missing, null));
      }
    }
    return open;
  }

  /** Everything told apart, with these findings and checks not judged. */
  Judgement judgement(
      List<Finding> findings,
      List<NotJudged> open,
      Optional<TestDays> days,
      List<LimitOverride> overrides,
      String edition,
      LocalDate asOf) {
    List<Check> notFitted = new ArrayList<>();
    List<Check> clear = new ArrayList<>();
    List<ClearOnAssumption> onAssumption = new ArrayList<>();
    TreeSet<Assumption> assumptions = new TreeSet<>();
    for (Checked checked : checks) {
      if (checked.isNotFitted()) {
        notFitted.add(checked.check);
        continue;
      }
      List<Assumption> assumed = checked.assumed();
      assumptions.addAll(assumed);
      if (!checked.isLoud() && assumed.isEmpty()) {
        clear.add(checked.check);
      } else if (!checked.isLoud()) {
        onAssumption.add(
            new ClearOnAssumption(
                checked.check, assumed.stream().map(Assumption::pointer).toList()));
      }
    }
    findings.forEach(finding -> assumptions.addAll(finding.provenance().assumed()));
    return new Judgement(
        checks.stream().map(Checked::check).toList(),
        findings,
        open,
        notFitted,
        clear,
        onAssumption,
        List.copyOf(assumptions),
        days,
        overrides,
        edition,
        asOf,
        List.of());
  }
}
