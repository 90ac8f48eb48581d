package deadband.judging;

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
    Acceptance acceptance = Acceptance.of(setup, asOf);
    List<Finding> findings = new ArrayList<>();
    Optional<TestDays> days = DayEvidence.days(setup, runs);
    List<Measure> onDays = days.map(DayEvidence::of).orElse(List.of());
    explained(outcomes, setup, limits)
        .forEach(finding -> findings.add(acceptance.applied(finding.withEvidence(onDays))));
    List<NotJudged> open = new ArrayList<>();
    outcomes.notJudged().forEach(check -> open.add(acceptance.applied(check)));
    Outcomes onEntries =
        Outcomes.of(book, acceptanceChecks, acceptance.cases(book, findings, open));
    findings.addAll(onEntries.findings());
    return outcomes
        .and(onEntries)
        .judgement(Ranking.ranked(findings), open, days, book.edition(), asOf);
  }

  private Outcomes outcomes(Setup setup, Limits limits) {
    return Outcomes.of(book, setupChecks, Cases.of(setup, limits, runs));
  }

  /** The findings, each with what proved to cure it and with the cause that lies behind it. */
  private List<Finding> explained(Outcomes outcomes, Setup setup, Limits limits) {
    List<Finding> findings = new ArrayList<>(Ranking.ranked(outcomes.findings()));
    for (int i = 0; i < findings.size(); i++) {
      Finding finding = findings.get(i);
      for (List<Change> candidate : finding.detail().cures()) {
        Outcomes after = outcomes(changed(setup, candidate), limits);
        if (after.cures(finding, outcomes)) {
          findings.set(i, finding.curedBy(candidate));
          findings.replaceAll(other -> other.linkedTo(finding, after));
          break;
        }
      }
    }
    findings.replaceAll(finding -> finding.causedBy(root(finding, findings)));
    return findings;
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

  private static Setup changed(Setup setup, List<Change> changes) {
    Setup changed = setup;
    for (Change change : changes) {
      changed = change.applyTo(changed);
    }
    return changed;
  }
}
