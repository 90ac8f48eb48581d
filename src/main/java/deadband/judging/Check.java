package deadband.judging;

import deadband.facts.Case;
import deadband.facts.Condition;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One check of the rule book, as its rule declares it.
 *
 * @param name of the rule, its page and its findings
 * @param formerNames names it had before; they stay known
 * @param topic folder of the rule book it stands in
 * @param consequence what follows where a finding is left as it is
 * @param essential whether sign-off waits for it while it is not judged, whatever its class
 * @param askedOnAssumption whether a finding that rests on an assumption is no more than a query
 * @param causes checks whose findings may lie behind this one's
 * @param caseType the case the rule looks at
 * @param conditions that the rule joins with it
 * @param housePage the page that a house rule brings along, null for a built-in check
 */
public record Check(
    String name,
    List<String> formerNames,
    String topic,
    Consequence consequence,
    boolean essential,
    boolean askedOnAssumption,
    List<String> causes,
    Class<? extends Case> caseType,
    List<Class<? extends Condition>> conditions,
    @Nullable RulePage housePage) {

  /** Whether this is its name, or once was. */
  public boolean isNamed(String wanted) {
    return name.equals(wanted) || formerNames.contains(wanted);
  }

  /** Whether sign-off waits for it where it is not judged. */
  public boolean holdsUpSignOff() {
    return essential || consequence.compareTo(Consequence.DAMAGE) <= 0;
  }

  /** Whether it is not built in but a rule of the house. */
  public boolean isHouse() {
    return housePage != null;
  }
}
