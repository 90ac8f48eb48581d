package deadband.facts;

import deadband.document.Pointer;
import deadband.provenance.Provenance;
import java.util.List;
import java.util.function.Supplier;

/**
 * What stands behind a case: its subject, where its values come from, and what is open about it.
 *
 * @param subject the thing the case is about; tells the cases of one check apart
 * @param behind where the case's values come from
 * @param openIfFound values not entered without which a match is not proven
 * @param openIfClear values not entered without which the absence of a match is not proven
 * @param unproven whether a match proves nothing: a value that the finding needs is not known
 * @param detail made only where a rule fires
 */
public record Evidence(
    Pointer subject,
    List<Provenance> behind,
    List<Pointer> openIfFound,
    List<Pointer> openIfClear,
    boolean unproven,
    Supplier<Detail> detail) {

  /** A matter that lacks its explanation. */
  @FunctionalInterface
  public interface Draft {
    Evidence explained(Supplier<Detail> detail);
  }
}
