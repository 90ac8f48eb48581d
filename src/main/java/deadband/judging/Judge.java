package deadband.judging;

import deadband.cases.Case;
import deadband.cases.CaseFault;
import deadband.cases.Cases;
import deadband.cases.DayEvidence;
import deadband.cases.DayRuns;
import deadband.cases.Limits;
import deadband.cases.Measure;
import deadband.dayrun.TestDays;
import deadband.setup.Change;
import deadband.setup.Setup;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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

  private final RuleBook book;
  private final DayRuns runs;
  private final List<Check> setupChecks;
  private final List<Check> acceptanceChecks;

  /**
   * A judge by a rule book.
   *
   * @param runs where the days come from on which setups are judged
   */
  public Judge(RuleBook book, DayRuns runs) {
    this.book = book;
    this.runs = runs;
    this.setupChecks = book.checks().stream().filter(check -> !Acceptance.isAbout(check)).toList();
    this.acceptanceChecks = book.checks().stream().filter(Acceptance::isAbout).toList();
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
    Outcomes outcomes = outcomes(setup, limits);
    Optional<TestDays> days = DayEvidence.days(setup, runs);
    return judgement(setup, outcomes, explained(outcomes, setup, limits, days), days, limits, asOf)
        .withAsFound(asFound(setup, outcomes, limits));
  }

  /** What the settings as found came to, and the proposed ones do not; no day is run for it. */
  private List<Check> asFound(Setup setup, Outcomes proposed, Limits limits) {
    if (!setup.asFound().settings().isTold()) {
      return List.of();
    }
    List<Check> now = proposed.findings().stream().map(Finding::check).toList();
    return decided(setup.asItWasFound(), limits, DayRuns.none()).findings().stream()
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
    Outcomes onEntries =
        Outcomes.of(book, acceptanceChecks, acceptance.cases(book, findings, open));
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
    try {
      return Outcomes.of(book, setupChecks, Cases.of(setup, limits, runs));
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
  private List<Finding> explained(
      Outcomes outcomes, Setup setup, Limits limits, Optional<TestDays> days) {
    List<Finding> findings = new ArrayList<>(Ranking.ranked(outcomes.findings()));
    for (int i = 0; i < findings.size(); i++) {
      Finding finding = findings.get(i);
      Trial best = best(finding, outcomes, setup, limits);
      if (best != null) {
        findings.set(i, finding.curedBy(best.changes(), best.proof(outcomes, days, runs)));
        findings.replaceAll(other -> other.linkedTo(finding, best.after()));
      }
    }
    findings.replaceAll(finding -> finding.causedBy(root(finding, findings)));
    return findings;
  }

  /** The first remedy that cures and raises nothing; else the first that cures. */
  private @Nullable Trial best(Finding finding, Outcomes before, Setup setup, Limits limits) {
    Trial first = null;
    for (List<Change> candidate : finding.detail().cures()) {
      Setup changed = Change.all(candidate, setup);
      Trial trial = new Trial(candidate, changed, outcomes(changed, limits));
      if (trial.after().cures(finding, before)) {
        if (trial.after().raisedSince(before).isEmpty()) {
          return trial;
        }
        first = first == null ? trial : first;
      }
    }
    return first;
  }

  /** A remedy tried. */
  private record Trial(List<Change> changes, Setup changed, Outcomes after) {

    Proof proof(Outcomes before, Optional<TestDays> days, DayRuns runs) {
      return new Proof(
          before.raisedSince(after),
          after.raisedSince(before),
          days,
          DayEvidence.days(changed, runs));
    }
  }

  /** The finding at the far end of the causes, so that each is folded under one that is shown. */
  private static Finding.@Nullable Key root(Finding finding, List<Finding> findings) {
    Finding.Key key = finding.causedBy();
    Set<Finding.Key> passed = new HashSet<>();
    while (key != null && passed.add(key)) {
      Finding.Key next = causeOf(key, findings);
      if (next == null) {
        return key;
      }
      key = next;
    }
    return key;
  }

  private static Finding.@Nullable Key causeOf(Finding.Key key, List<Finding> findings) {
    return findings.stream()
        .filter(finding -> finding.key().equals(key))
        .findFirst()
        .map(Finding::causedBy)
        .orElse(null);
  }
}
