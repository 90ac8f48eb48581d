package deadband.facts;

import deadband.document.Pointer;
import deadband.provenance.Provenance;
import java.util.List;
import java.util.function.Supplier;

/**
 * What stands behind a case: its subject, where its numbers come from, and what is open about it.
 *
 * @param subject the thing the case is about; tells the facts of one check apart
 * @param behind where the case's values come from
 * @param openIfFound values not told without which a violation is not proven
 * @param openIfClear values not told without which the absence of a violation is not proven
 * @param detail made only where a rule fires
 */
public record Matter(
    Pointer subject,
    List<Provenance> behind,
    List<Pointer> openIfFound,
    List<Pointer> openIfClear,
    Supplier<Detail> detail) {

  /** Where the case's values come from, together. */
  public Provenance provenance() {
    return Provenance.all(behind);
  }

  /** A matter that lacks its explanation. */
  @FunctionalInterface
  public interface Draft {
    Matter explained(Supplier<Detail> detail);
  }
}
