package deadband.provenance;

import deadband.document.Pointer;

/**
 * A documented default that stood in for a value not entered.
 *
 * @param pointer the value not entered
 * @param value what was taken instead: a {@code Double} or a choice
 * @param basis where the default comes from
 */
public record Assumption(Pointer pointer, Object value, String basis)
    implements Comparable<Assumption> {

  @Override
  public int compareTo(Assumption other) {
    return pointer.compareTo(other.pointer);
  }
}
