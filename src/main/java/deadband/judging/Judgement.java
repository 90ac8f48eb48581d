package deadband.judging;

import deadband.dayrun.TestDays;
import deadband.limits.LimitOverride;
import deadband.provenance.Assumption;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Everything a setup was judged to be.
 *
 * @param checks the checks of the rule book, by name
 * @param findings ranked, worst first
 * @param notJudged by name
 * @param notFitted checks about things that are not there, by name
 * @param clear checks that found nothing, by name
 * @param clearOnAssumption checks that found nothing only on a default, by name
 * @param assumptions the defaults used, by pointer
 * @param days what a clear day, a cloudy one and a disinfection cycle come to; empty where they
 *     could not be run, or were left out
 * @param overrides the limits that a site set in place of the rule book's
 * @param edition of the rule book
 * @param asOf the date against which acceptances were held
 * @param asFound hazards and damage of the settings as they were found, which the proposed ones do
 *     not have, without day runs
 */
public record Judgement(
    List<Check> checks,
    List<Finding> findings,
    List<NotJudged> notJudged,
    List<Check> notFitted,
    List<Check> clear,
    List<ClearOnAssumption> clearOnAssumption,
    List<Assumption> assumptions,
    Optional<TestDays> days,
    List<LimitOverride> overrides,
    String edition,
    LocalDate asOf,
    List<Check> asFound) {

  /** The same, with what the settings as found came to. */
  Judgement withAsFound(List<Check> checks) {
    return new Judgement(
        this.checks,
        findings,
        notJudged,
        notFitted,
        clear,
        clearOnAssumption,
        assumptions,
        days,
        overrides,
        edition,
        asOf,
        checks);
  }

  public Verdict verdict() {
    if (findings.stream().anyMatch(f -> f.isOpen() && f.consequence().blocksSignOff())) {
      return Verdict.NOT_READY;
    }
    boolean open =
        findings.stream().anyMatch(Finding::isOpen)
            || notJudged.stream().anyMatch(NotJudged::holdsUpSignOff);
    return open ? Verdict.ANSWERS_NEEDED : Verdict.READY;
  }

  /** What is to be asked so that everything can be judged, the most urgent first. */
  public List<OpenQuestion> questions() {
    return OpenQuestion.of(notJudged);
  }

  /** Whether not one check could be made. */
  public boolean isEmpty() {
    return findings.isEmpty() && clear.isEmpty() && clearOnAssumption.isEmpty();
  }

  /** How many open or accepted findings of a class there are. */
  public int count(Consequence consequence) {
    return (int) findings.stream().filter(f -> f.consequence() == consequence).count();
  }

  /** Place of a finding in the ranking, from 1; 0 where it is not in it. */
  public int rank(Finding.Key key) {
    for (int i = 0; i < findings.size(); i++) {
      if (findings.get(i).key().equals(key)) {
        return i + 1;
      }
    }
    return 0;
  }
}
