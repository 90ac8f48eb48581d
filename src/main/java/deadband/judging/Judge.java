package deadband.judging;

import deadband.cases.Cases;
import deadband.cases.Limits;
import deadband.setup.Change;
import deadband.setup.Setup;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Judges setups against the rule book.
 *
 * <pre>{@code
 * Judge judge = new Judge(RuleBook.builtIn());
 * Judgement judgement = judge.judge(setup, Limits.standard(), LocalDate.of(2026, 5, 31));
 * judgement.verdict();   // READY, ANSWERS_NEEDED or NOT_READY
 * }</pre>
 *
 * <p>A judgement depends on its arguments alone; a judge may be shared between threads.
 */
public final class Judge {

  private final RuleBook book;
  private final List<Check> setupChecks;
  private final List<Check> acceptanceChecks;

  public Judge(RuleBook book) {
    this.book = book;
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
    explained(outcomes, setup, limits)
        .forEach(finding -> findings.add(acceptance.applied(finding)));
    List<NotJudged> open = new ArrayList<>();
    outcomes.notJudged().forEach(check -> open.add(acceptance.applied(check)));
    Outcomes onEntries =
        Outcomes.of(book, acceptanceChecks, acceptance.cases(book, findings, open));
    findings.addAll(onEntries.findings());
    return outcomes.and(onEntries).judgement(Ranking.ranked(findings), open, asOf);
  }

  private Outcomes outcomes(Setup setup, Limits limits) {
    return Outcomes.of(book, setupChecks, Cases.of(setup, limits));
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
    return findings;
  }

  private static Setup changed(Setup setup, List<Change> changes) {
    Setup changed = setup;
    for (Change change : changes) {
      changed = change.applyTo(changed);
    }
    return changed;
  }
}
