package deadband.remedy;

import deadband.judging.Finding;
import deadband.judging.Judgement;
import deadband.judging.NotJudged;
import deadband.judging.Proof;
import deadband.judging.Trust;
import deadband.setup.Change;
import java.util.List;
import java.util.Optional;

/**
 * The settings that bring a setup as near to sign-off as settings can, and the work that is left.
 *
 * @param changes by pointer, settings alone; empty where nothing that can be computed helps
 * @param before the setup as it is
 * @param after the setup with the changes, judged afresh
 * @param proof what the changes together clear, raise, and make of a year; empty without changes
 */
public record Proposal(
    List<Change> changes, Judgement before, Judgement after, Optional<Proof> proof) {

  /** How far the changes can be trusted: never safe while a hazard is not judged with them. */
  public Trust trust() {
    boolean safe =
        proof
            .filter(tried -> tried.trust() == Trust.SAFE && tried.hazardsOpen().isEmpty())
            .isPresent();
    return safe ? Trust.SAFE : Trust.TRADE_OFF;
  }

  /** The findings that stay with the changes. */
  public List<Finding> inTheWay() {
    return after.findings().stream().filter(Finding::isOpen).toList();
  }

  /** The checks that sign-off still waits for. */
  public List<NotJudged> waitedFor() {
    return after.notJudged().stream().filter(NotJudged::holdsUpSignOff).toList();
  }
}
