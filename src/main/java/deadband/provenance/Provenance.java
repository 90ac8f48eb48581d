package deadband.provenance;

import deadband.document.Pointer;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Where a derived value comes from: values entered, defaults, and values that are missing.
 *
 * <p>Most of what is derived stays silent, so that two together only note one another; the lists
 * are made where they are asked for.
 */
public final class Provenance {

  /** Of a value that comes from nowhere in the setup. */
  public static final Provenance NONE = new Provenance(false, null, null);

  private final boolean restsOnDefaults;
  private final boolean incomplete;
  private final @Nullable Provenance one;
  private final @Nullable Provenance other;

  /** The value entered or missing. */
  private final @Nullable Pointer value;

  private final @Nullable Assumption assumption;

  private Provenance(boolean incomplete, @Nullable Pointer value, @Nullable Assumption assumption) {
    this.restsOnDefaults = assumption != null;
    this.incomplete = incomplete;
    this.one = null;
    this.other = null;
    this.value = value;
    this.assumption = assumption;
  }

  private Provenance(Provenance one, Provenance other) {
    this.restsOnDefaults = one.restsOnDefaults || other.restsOnDefaults;
    this.incomplete = one.incomplete || other.incomplete;
    this.one = one;
    this.other = other;
    this.value = null;
    this.assumption = null;
  }

  public static Provenance entered(Pointer pointer) {
    return new Provenance(false, pointer, null);
  }

  public static Provenance assumed(Assumption assumption) {
    return new Provenance(false, null, assumption);
  }

  public static Provenance missing(Pointer pointer) {
    return new Provenance(true, pointer, null);
  }

  /** Values it was derived from, sorted, without repeats. */
  public List<Pointer> entered() {
    return gathered(part -> true, part -> part.incomplete ? null : part.value);
  }

  /** Defaults it was derived from, sorted, without repeats. */
  public List<Assumption> assumed() {
    return gathered(part -> part.restsOnDefaults, part -> part.assumption);
  }

  /** Values that are not entered and without which it is not known, sorted, without repeats. */
  public List<Pointer> missing() {
    return gathered(part -> part.incomplete, part -> part.value);
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
  @SuppressWarnings("ReferenceEquality") // to compare what they list would be to list it
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

  /** Each part once, though many ways may lead to it, and in turn, however long the chain. */
  private <T extends Comparable<T>> List<T> gathered(
      Predicate<Provenance> concerned, Function<Provenance, @Nullable T> held) {
    if (!concerned.test(this)) {
      return List.of();
    }
    T alone = held.apply(this);
    if (alone != null) {
      return List.of(alone);
    }
    TreeSet<T> all = new TreeSet<>();
    Set<Provenance> met = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<Provenance> ahead = new ArrayDeque<>(List.of(this));
    while (!ahead.isEmpty()) {
      Provenance part = ahead.pop();
      T here = held.apply(part);
      if (here != null) {
        all.add(here);
      } else if (part.one != null && part.other != null && met.add(part)) {
        push(part.other, concerned, ahead);
        push(part.one, concerned, ahead);
      }
    }
    return List.copyOf(all);
  }

  private static void push(
      Provenance part, Predicate<Provenance> concerned, Deque<Provenance> ahead) {
    if (concerned.test(part)) {
      ahead.push(part);
    }
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
    return object instanceof Provenance that
        && entered().equals(that.entered())
        && assumed().equals(that.assumed())
        && missing().equals(that.missing());
  }

  @Override
  public int hashCode() {
    return Objects.hash(entered(), assumed(), missing());
  }

  @Override
  public String toString() {
    return "entered " + entered() + ", assumed " + assumed() + ", missing " + missing();
  }
}
