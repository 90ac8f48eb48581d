package deadband.judging;

import deadband.facts.Case;
import deadband.facts.Fact;
import deadband.provenance.Provenance;
import java.util.List;

/**
 * A rule that matched.
 *
 * @param check name of the rule
 * @param found the case it reports
 * @param joined every fact it looked at, the case among them
 */
public record Match(String check, Case found, List<Fact> joined) {

  public Match {
    joined = List.copyOf(joined);
  }

  /** Where all it looked at comes from. */
  Provenance provenance() {
    Provenance all = found.provenance();
    for (Fact fact : joined) {
      all = all.and(fact.provenance());
    }
    return all;
  }
}
