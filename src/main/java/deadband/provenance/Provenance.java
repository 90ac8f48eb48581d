package deadband.provenance;

import deadband.document.Pointer;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Where a derived value comes from: values entered, defaults, and values that are missing.
 *
 * <p>Most of what is derived stays silent, so that two together only note one another; the lists
 * are made where they are asked for.
 */
public final class Provenance {

  /** Of a value that comes from nowhere in the setup. */
  public static final Provenance NONE = new Provenance(new Lists(List.of(), List.of(), List.of()));

  private final boolean restsOnDefaults;
  private final boolean incomplete;
  private final @Nullable Provenance one;
  private final @Nullable Provenance other;
  private @Nullable Lists lists;

  /** What it comes to; each list sorted, without repeats. */
  private record Lists(List<Pointer> entered, List<Assumption> assumed, List<Pointer> missing) {}

  private Provenance(Lists lists) {
    this.restsOnDefaults = !lists.assumed.isEmpty();
    this.incomplete = !lists.missing.isEmpty();
    this.one = null;
    this.other = null;
    this.lists = lists;
  }

  private Provenance(Provenance one, Provenance other) {
    this.restsOnDefaults = one.restsOnDefaults || other.restsOnDefaults;
    this.incomplete = one.incomplete || other.incomplete;
    this.one = one;
    this.other = other;
  }

  public static Provenance entered(Pointer pointer) {
    return new Provenance(new Lists(List.of(pointer), List.of(), List.of()));
  }

  public static Provenance assumed(Assumption assumption) {
    return new Provenance(new Lists(List.of(), List.of(assumption), List.of()));
  }

  public static Provenance missing(Pointer pointer) {
    return new Provenance(new Lists(List.of(), List.of(), List.of(pointer)));
  }

  /** Values it was derived from. */
  public List<Pointer> entered() {
    return lists().entered;
  }

  /** Defaults it was derived from. */
  public List<Assumption> assumed() {
    return restsOnDefaults ? lists().assumed : List.of();
  }

  /** Values that are not entered and without which it is not known. */
  public List<Pointer> missing() {
    return incomplete ? lists().missing : List.of();
  }

  /** Whether it was derived from any default. */
  public boolean restsOnDefaults() {
    return restsOnDefaults;
  }

  /** Whether any value is missing. */
  public boolean isIncomplete() {
    return incomplete;
  }

  /** Both together; of two defaults of one value, the first's. */
  public Provenance and(Provenance more) {
    if (more == NONE || more == this) {
      return this;
    }
    return this == NONE ? more : new Provenance(this, more);
  }

  /** All of these together. */
  public static Provenance all(List<Provenance> parts) {
    Provenance all = NONE;
    for (Provenance part : parts) {
      all = all.and(part);
    }
    return all;
  }

  private Lists lists() {
    Lists known = lists;
    if (known == null) {
      known = gathered();
      lists = known;
    }
    return known;
  }

  /** Each part once, though many ways may lead to it, and in turn, however long the chain. */
  private Lists gathered() {
    TreeSet<Pointer> entered = new TreeSet<>();
    TreeSet<Assumption> assumed = new TreeSet<>();
    TreeSet<Pointer> missing = new TreeSet<>();
    Set<Provenance> met = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<Provenance> ahead = new ArrayDeque<>(List.of(this));
    while (!ahead.isEmpty()) {
      Provenance part = ahead.pop();
      if (met.add(part)) {
        Lists known = part.lists;
        if (known != null) {
          entered.addAll(known.entered);
          assumed.addAll(known.assumed);
          missing.addAll(known.missing);
        } else if (part.one != null && part.other != null) {
          ahead.push(part.other);
          ahead.push(part.one);
        }
      }
    }
    return new Lists(List.copyOf(entered), List.copyOf(assumed), List.copyOf(missing));
  }

  /** The pointers of the defaults used. */
  public List<Pointer> assumedPointers() {
    return assumed().stream().map(Assumption::pointer).toList();
  }

  public static <T extends Comparable<T>> List<T> union(Collection<T> one, Collection<T> other) {
    if (other.isEmpty()) {
      return List.copyOf(one);
    }
    TreeSet<T> all = new TreeSet<>(one);
    all.addAll(other);
    return List.copyOf(all);
  }

  @Override
  public boolean equals(@Nullable Object object) {
    return object instanceof Provenance that && that.lists().equals(lists());
  }

  @Override
  public int hashCode() {
    return lists().hashCode();
  }

  @Override
  public String toString() {
    return lists().toString();
  }
}
