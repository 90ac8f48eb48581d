package deadband.remedy;

import deadband.judging.Finding;
import deadband.judging.Judgement;
import deadband.judging.NotJudged;
import deadband.judging.Proof;
import deadband.setup.Change;
import java.util.List;

/**
 * The smallest set of changes that brings a setup to sign-off, or as near as it can be brought.
 *
 * @param changes by pointer; empty where nothing that can be computed helps
 * @param before the setup as it is
 * @param after the setup with the changes, judged afresh
 * @param proof what the changes together clear, raise, and make of a day
 */
public record Proposal(List<Change> changes, Judgement before, Judgement after, Proof proof) {

  /** The findings that stay in the way, for which only the site can say what to set. */
  public List<Finding> inTheWay() {
    return after.findings().stream().filter(Finding::isOpen).toList();
  }

  /** The checks that sign-off still waits for. */
  public List<NotJudged> waitedFor() {
    return after.notJudged().stream().filter(NotJudged::holdsUpSignOff).toList();
  }
}
