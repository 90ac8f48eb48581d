package deadband.judging;

import deadband.document.Pointer;
import deadband.setup.Accepted;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A check that could not be judged.
 *
 * @param missing the values without which the answer stays open; empty where it rests on day runs
 *     that were left out
 * @param accepted the entry that accepts them open, null where it is open
 */
public record NotJudged(Check check, List<Pointer> missing, @Nullable Accepted accepted) {

  /** Whether sign-off waits for it. */
  public boolean holdsUpSignOff() {
    return accepted == null && check.holdsUpSignOff();
  }
}
