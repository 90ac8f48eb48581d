package deadband.facts;

import deadband.document.Pointer;
import deadband.provenance.Provenance;
import java.util.List;
import java.util.function.Supplier;

/**
 * What stands behind a case: its subject, where its numbers come from, and what is open about it.
 *
 * @param subject the thing the case is about; tells the facts of one check apart
 * @param provenance where the case's numbers come from
 * @param openIfFound values not told without which a violation is not proven
 * @param openIfClear values not told without which the absence of a violation is not proven
 * @param detail made only where a rule fires
 * @param posed whether its values are read, open ones too
 */
public record Matter(
    Pointer subject,
    Provenance provenance,
    List<Pointer> openIfFound,
    List<Pointer> openIfClear,
    Supplier<Detail> detail,
    boolean posed) {

  /** A matter that lacks its explanation. */
  @FunctionalInterface
  public interface Draft {
    Matter explained(Supplier<Detail> detail);
  }
}
