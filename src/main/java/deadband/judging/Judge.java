package deadband.judging;

import deadband.dayrun.TestDays;
import deadband.days.DayEvidence;
import deadband.days.DayRuns;
import deadband.days.YearRuns;
import deadband.facts.Case;
import deadband.facts.CaseFault;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.limits.Limits;
import deadband.setup.Setup;
import deadband.topics.Topics;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Judges setups against the rule book.
 *
 * <pre>{@code
 * Judge judge = new Judge(RuleBook.builtIn(), DayRuns.remembered());
 * Judgement judgement = judge.judge(setup, Limits.standard(), LocalDate.of(2026, 5, 31));
 * judgement.verdict();   // READY, ANSWERS_NEEDED or NOT_READY
 * }</pre>
 *
 * <p>A judgement depends on its arguments alone; a judge may be shared between threads.
 */
public final class Judge {

  /** Findings of one check whose remedies are tried each by itself. */
  private static final int MOST_ALONE = 12;

  /** Findings of one check whose remedies are tried together, beyond those. */
  private static final int MOST_TOGETHER = 200;

  private final RuleBook book;
  private final DayRuns runs;
  private final @Nullable YearRuns years;
  private final boolean anew;
  private final List<Check> setupChecks;
  private final List<Check> acceptanceChecks;

  /** Those whose findings may be of a hazard or of damage. */
  private final List<Check> damageChecks;

  /**
   * A judge by a rule book.
   *
   * @param runs where the days come from on which setups are judged
   */
  public Judge(RuleBook book, DayRuns runs) {
    this(book, runs, null);
  }

  /**
   * A judge that weighs the remedies of hunting and waste by a year of days as well.
   *
   * @param years where the years come from; null where they are left out
   */
  public Judge(RuleBook book, DayRuns runs, @Nullable YearRuns years) {
    this(book, runs, years, false);
  }

  private Judge(RuleBook book, DayRuns runs, @Nullable YearRuns years, boolean anew) {
    this.book = book;
    this.runs = runs;
    this.years = years;
    this.anew = anew;
    this.setupChecks = book.checks().stream().filter(check -> !Acceptance.isAbout(check)).toList();
    this.acceptanceChecks = book.checks().stream().filter(Acceptance::isAbout).toList();
    this.damageChecks =
        setupChecks.stream()
            .filter(check -> check.consequence().compareTo(Consequence.DAMAGE) <= 0)
            .toList();
  }

  public RuleBook book() {
    return book;
  }

  /**
   * Judges one setup.
   *
   * @param limits the table of limits in force
   * @param asOf the date against which acceptances are held
   */
  public Judgement judge(Setup setup, Limits limits, LocalDate asOf) {
    return judge(trials(setup, limits), asOf);
  }

  /** The same, with what was tried already. */
  public Judgement judge(Trials trials, LocalDate asOf) {
    Setup setup = trials.setup();
    Limits limits = trials.limits();
    Outcomes outcomes = trials.before();
    return judgement(setup, outcomes, explained(outcomes, trials), trials.days(), limits, asOf)
        .withAsFound(asFound(trials));
  }

  /**
   * Trials of changes to a setup, one remedy or set of changes after the other. A rule of a house
   * may look at anything, so that with one each change is judged all anew.
   */
  public Trials trials(Setup setup, Limits limits) {
    return isAllAnew(limits)
        ? new Trials(
            setup,
            limits,
            outcomes(setup, limits),
            runs,
            years,
            changed -> outcomes(changed, limits),
            (other, some) -> decided(other, limits, DayRuns.none()).findings())
        : changing(List.of(setup), limits).get(0);
  }

  /**
   * Trials of several setups, judged side by side, which takes less time than one after the other.
   * What fails for one of them fails where its trials are asked for.
   */
  public List<Supplier<Trials>> trials(List<Setup> setups, Limits limits) {
    if (!isAllAnew(limits)) {
      try {
        return changing(setups, limits).stream().<Supplier<Trials>>map(done -> () -> done).toList();
      } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
        // each meets its own below
      }
    }
    return setups.stream().<Supplier<Trials>>map(setup -> () -> trials(setup, limits)).toList();
  }

  private boolean isAllAnew(Limits limits) {
    return anew || book.hasHouse() || !limits.weakened().isEmpty();
  }

  private List<Trials> changing(List<Setup> setups, Limits limits) {
    return faultsNamed(() -> Rejudging.of(book, setupChecks, setups, limits, runs)).stream()
        .map(
            rejudging ->
                new Trials(
                    rejudging.setup(),
                    limits,
                    rejudging.before(),
                    runs,
                    years,
                    changed -> faultsNamed(() -> rejudging.of(changed)),
                    (other, some) -> faultsNamed(() -> rejudging.findings(other, some))))
        .toList();
  }

  /** The same judge without the shortcut for changes. */
  Judge judgingAnew() {
    return new Judge(book, runs, years, true);
  }

  /** What the settings as found came to, and the proposed ones do not; no day is run for it. */
  private List<Check> asFound(Trials trials) {
    Setup setup = trials.setup();
    if (!setup.asFound().settings().isEntered()) {
      return List.of();
    }
    List<Check> now = trials.before().findings().stream().map(Finding::check).toList();
    return trials.withoutDays(setup.asItWasFound(), damageChecks).stream()
        .filter(finding -> finding.consequence().compareTo(Consequence.DAMAGE) <= 0)
        .map(Finding::check)
        .filter(check -> !now.contains(check))
        .distinct()
        .toList();
  }

  /** The same without trying remedies or looking for causes: for trying many changes. */
  public Judgement glance(Setup setup, Limits limits, LocalDate asOf) {
    Outcomes outcomes = outcomes(setup, limits);
    Optional<TestDays> days = DayEvidence.days(setup, runs);
    return judgement(setup, outcomes, outcomes.findings(), days, limits, asOf);
  }

  /** The same, of a setup that is judged already. */
  public Judgement glance(Trials trials, LocalDate asOf) {
    Outcomes outcomes = trials.before();
    return judgement(
        trials.setup(), outcomes, outcomes.findings(), trials.days(), trials.limits(), asOf);
  }

  private Judgement judgement(
      Setup setup,
      Outcomes outcomes,
      List<Finding> found,
      Optional<TestDays> days,
      Limits limits,
      LocalDate asOf) {
    Acceptance acceptance = Acceptance.of(setup, asOf);
    List<Finding> findings = new ArrayList<>();
    List<Measure> onDays = days.map(DayEvidence::of).orElse(List.of());
    found.forEach(finding -> findings.add(acceptance.applied(finding.withEvidence(onDays))));
    List<NotJudged> open = new ArrayList<>();
    outcomes.notJudged().forEach(check -> open.add(acceptance.applied(check)));
    Facts entries = acceptance.cases(book, findings, open);
    Outcomes onEntries = Outcomes.of(Matches.of(book, entries), acceptanceChecks, entries);
    findings.addAll(onEntries.findings());
    return outcomes
        .and(onEntries)
        .judgement(Ranking.ranked(findings), open, days, limits.overrides(), book.edition(), asOf);
  }

  /** A hazard by the rule book stays, as a question, where a site let more of it pass. */
  private Outcomes outcomes(Setup setup, Limits limits) {
    Outcomes outcomes = decided(setup, limits);
    return limits.weakened().isEmpty()
        ? outcomes
        : outcomes.keeping(decided(setup, limits.unweakened()), limits.weakened());
  }

  private Outcomes decided(Setup setup, Limits limits) {
    return decided(setup, limits, runs);
  }

  private Outcomes decided(Setup setup, Limits limits, DayRuns runs) {
    return faultsNamed(
        () -> {
          Facts facts = Topics.of(setup, limits, runs);
          return Outcomes.of(Matches.of(book, facts), setupChecks, facts);
        });
  }

  private <T> T faultsNamed(Supplier<T> judging) {
    try {
      return judging.get();
    } catch (CaseFault fault) {
      throw new CheckFault(namesOf(fault.type()), fault);
    }
  }

  private String namesOf(Class<? extends Case> type) {
    return book.checks().stream()
        .filter(check -> check.caseType() == type)
        .map(Check::name)
        .collect(Collectors.joining(", "));
  }

  /** The findings, each with what proved to cure it and with the cause that lies behind it. */
  private static List<Finding> explained(Outcomes outcomes, Trials trials) {
    List<Finding> ranked = Ranking.ranked(outcomes.findings());
    Map<String, Integer> triedOf = new HashMap<>();
    Map<String, List<Finding>> many = new LinkedHashMap<>();
    List<Finding> findings = new ArrayList<>();
    for (Finding finding : ranked) {
      String check = finding.check().name();
      if (triedOf.merge(check, 1, Integer::sum) > MOST_ALONE) {
        many.computeIfAbsent(check, name -> new ArrayList<>()).add(finding);
      } else {
        findings.add(finding.curedBy(trials.remedies(finding)));
      }
    }
    many.values().forEach(others -> findings.addAll(inOneGo(others, trials)));
    return rooted(linked(Ranking.ranked(findings), trials));
  }

  /** The first of many findings of one check, tried together; the others as they are. */
  private static List<Finding> inOneGo(List<Finding> many, Trials trials) {
    int most = Math.min(many.size(), MOST_TOGETHER);
    List<Finding> all = new ArrayList<>(trials.together(many.subList(0, most)));
    all.addAll(many.subList(most, many.size()));
    return all;
  }

  /** Each finding linked to the first other whose cure takes it away too. */
  private static List<Finding> linked(List<Finding> ranked, Trials trials) {
    Set<String> causes = new HashSet<>();
    ranked.forEach(finding -> causes.addAll(finding.check().causes()));
    List<Finding> findings = new ArrayList<>(ranked);
    Map<String, Integer> triedOf = new HashMap<>();
    for (Finding finding : ranked) {
      String check = finding.check().name();
      if (causes.contains(check) && triedOf.merge(check, 1, Integer::sum) <= MOST_ALONE) {
        trials
            .without(finding)
            .ifPresent(after -> findings.replaceAll(other -> other.linkedTo(finding, after)));
      }
    }
    return findings;
  }

  private static List<Finding> rooted(List<Finding> findings) {
    Map<Finding.Key, Finding> byKey = new HashMap<>();
    findings.forEach(finding -> byKey.put(finding.key(), finding));
    return findings.stream().map(finding -> finding.causedBy(root(finding, byKey))).toList();
  }

  /** The finding at the far end of the causes, so that each is folded under one that is shown. */
  private static Finding.@Nullable Key root(Finding finding, Map<Finding.Key, Finding> findings) {
    Finding.Key key = finding.causedBy();
    Set<Finding.Key> passed = new HashSet<>();
    while (key != null && passed.add(key)) {
      Finding cause = findings.get(key);
      if (cause == null || cause.causedBy() == null) {
        return key;
      }
      key = cause.causedBy();
    }
    return key;
  }
}
