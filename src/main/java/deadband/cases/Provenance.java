package deadband.cases;

import deadband.document.Pointer;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/**
 * Where a derived value comes from: each list sorted, without repeats.
 *
 * @param told values it was derived from
 * @param assumed defaults it was derived from
 * @param missing values that are not told and without which it is not known
 */
public record Provenance(List<Pointer> told, List<Assumption> assumed, List<Pointer> missing) {

  /** Of a value that comes from nowhere in the setup. */
  public static final Provenance NONE = new Provenance(List.of(), List.of(), List.of());

  public static Provenance told(Pointer pointer) {
    return new Provenance(List.of(pointer), List.of(), List.of());
  }

  public static Provenance assumed(Assumption assumption) {
    return new Provenance(List.of(), List.of(assumption), List.of());
  }

  public static Provenance missing(Pointer pointer) {
    return new Provenance(List.of(), List.of(), List.of(pointer));
  }

  /** Both together. */
  public Provenance and(Provenance other) {
    if (equals(other)) {
      return this;
    }
    return new Provenance(
        union(told, other.told), union(assumed, other.assumed), union(missing, other.missing));
  }

  /** The pointers of the defaults used. */
  public List<Pointer> assumedPointers() {
    return assumed.stream().map(Assumption::pointer).toList();
  }

  static <T extends Comparable<T>> List<T> union(Collection<T> one, Collection<T> other) {
    if (other.isEmpty()) {
      return List.copyOf(one);
    }
    TreeSet<T> all = new TreeSet<>(one);
    all.addAll(other);
    return List.copyOf(all);
  }
}
