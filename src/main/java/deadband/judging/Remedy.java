package deadband.judging;

import deadband.setup.Change;
import java.util.List;

/**
 * Changes that were tried and take a finding away.
 *
 * @param changes by the places they set
 * @param work what has to be done on site before they hold, in words; empty where all are settings
 * @param proof what came of trying them
 */
public record Remedy(List<Change> changes, List<String> work, Proof proof) {

  public Trust trust() {
    return work.isEmpty() ? proof.trust() : Trust.WORK_ON_SITE;
  }

  /** Whether all of it can be entered at the controls. */
  public boolean isSetting() {
    return work.isEmpty();
  }
}
