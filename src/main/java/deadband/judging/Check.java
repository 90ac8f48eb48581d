package deadband.judging;

import deadband.cases.Case;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One check of the rule book, as its rule declares it.
 *
 * @param name of the rule, its page and its findings
 * @param topic folder of the rule book it stands in
 * @param consequence what follows where a finding is left as it is
 * @param essential whether sign-off waits for it while it is not judged, whatever its class
 * @param causes checks whose findings may lie behind this one's
 * @param caseType the case the rule looks at
 * @param housePage the page that a house rule brings along, null for a built-in check
 */
public record Check(
    String name,
    String topic,
    Consequence consequence,
    boolean essential,
    List<String> causes,
    Class<? extends Case> caseType,
    @Nullable RulePage housePage) {

  /** Whether it is not built in but a rule of the house. */
  public boolean isHouse() {
    return housePage != null;
  }
}
