package deadband.provenance;

import deadband.document.Pointer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;

/**
 * Where a derived value comes from: each list sorted, without repeats.
 *
 * @param entered values it was derived from
 * @param assumed defaults it was derived from
 * @param missing values that are not entered and without which it is not known
 */
public record Provenance(List<Pointer> entered, List<Assumption> assumed, List<Pointer> missing) {

  /** Of a value that comes from nowhere in the setup. */
  public static final Provenance NONE = new Provenance(List.of(), List.of(), List.of());

  public static Provenance entered(Pointer pointer) {
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
    if (other.isEmpty()) {
      return this;
    }
    if (isEmpty()) {
      return other;
    }
    List<Pointer> bothEntered = merged(entered, other.entered);
    List<Assumption> bothAssumed = merged(assumed, other.assumed);
    List<Pointer> bothMissing = merged(missing, other.missing);
    boolean same =
        bothEntered.size() == entered.size()
            && bothAssumed.size() == assumed.size()
            && bothMissing.size() == missing.size();
    return same ? this : new Provenance(bothEntered, bothAssumed, bothMissing);
  }

  /** All of these together; merged by halves, so that a long list stays quick. */
  public static Provenance all(List<Provenance> parts) {
    if (parts.size() < 2) {
      return parts.isEmpty() ? NONE : parts.get(0);
    }
    int half = parts.size() / 2;
    return all(parts.subList(0, half)).and(all(parts.subList(half, parts.size())));
  }

  /** Two sorted lists without repeats as one; the first itself where it holds the other. */
  private static <T extends Comparable<T>> List<T> merged(List<T> one, List<T> other) {
    if (other.isEmpty()) {
      return one;
    }
    if (one.isEmpty()) {
      return other;
    }
    List<T> all = new ArrayList<>(one.size() + other.size());
    int i = 0;
    int j = 0;
    while (i < one.size() && j < other.size()) {
      int order = one.get(i).compareTo(other.get(j));
      all.add(order <= 0 ? one.get(i) : other.get(j));
      i += order <= 0 ? 1 : 0;
      j += order >= 0 ? 1 : 0;
    }
    all.addAll(one.subList(i, one.size()));
    all.addAll(other.subList(j, other.size()));
    return all.size() == one.size() ? one : Collections.unmodifiableList(all);
  }

  private boolean isEmpty() {
    return entered.isEmpty() && assumed.isEmpty() && missing.isEmpty();
  }

  /** The pointers of the defaults used. */
  public List<Pointer> assumedPointers() {
    return assumed.stream().map(Assumption::pointer).toList();
  }

  public static <T extends Comparable<T>> List<T> union(Collection<T> one, Collection<T> other) {
    if (other.isEmpty()) {
      return List.copyOf(one);
    }
    TreeSet<T> all = new TreeSet<>(one);
    all.addAll(other);
    return List.copyOf(all);
  }
}
