package deadband.judging;

import deadband.document.Pointer;
import deadband.facts.Case;
import deadband.facts.Fact;
import deadband.provenance.Assumption;
import deadband.provenance.Provenance;
import java.util.List;
import java.util.function.Predicate;

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
    Provenance all = Provenance.NONE;
    for (Fact fact : joined) {
      for (Provenance part : fact.behind()) {
        all = all.and(part);
      }
    }
    return all;
  }

  /** What is missing of all it looked at. */
  List<Pointer> missing() {
    return provenance().missing();
  }

  /** The defaults that what it looked at rests on. */
  List<Assumption> assumed() {
    return provenance().assumed();
  }

  /** Whether it may not be one where defaults do not count. */
  boolean restsOnDefaults() {
    return anyBehind(Provenance::restsOnDefaults);
  }

  /** Whether it may not be one where what is open does not hold. */
  boolean isOpen() {
    return found.evidence().unproven()
        || !found.evidence().openIfClear().isEmpty()
        || anyBehind(Provenance::isIncomplete);
  }

  private boolean anyBehind(Predicate<Provenance> test) {
    for (Fact fact : joined) {
      for (Provenance part : fact.behind()) {
        if (test.test(part)) {
          return true;
        }
      }
    }
    return false;
  }
}
