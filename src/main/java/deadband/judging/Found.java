package deadband.judging;

import deadband.facts.Case;
import deadband.facts.Fact;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.kie.api.runtime.rule.RuleContext;

/** The one consequence of every rule. */
public final class Found {

  /** Where the session that runs the rules takes what they report. */
  static final String CHANNEL = "found";

  private Found() {}

  /** Reports the case that the rule matched. */
  public static void found(RuleContext context, Case found) {
    List<Fact> joined = new ArrayList<>();
    for (Object fact : context.getMatch().getObjects()) {
      joined.add((Fact) fact);
    }
    Objects.requireNonNull(context.getKieRuntime().getChannels().get(CHANNEL))
        .send(new Match(context.getRule().getName(), found, joined));
  }
}
