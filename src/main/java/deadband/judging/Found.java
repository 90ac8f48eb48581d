package deadband.judging;

import deadband.cases.Case;
import org.kie.api.runtime.rule.RuleContext;

/** The one consequence of every rule. */
public final class Found {

  private Found() {}

  /** Reports the case that the rule matched. */
  public static void found(RuleContext context, Case found) {
    context.getKieRuntime().insert(new Violation(context.getRule().getName(), found));
  }
}
