package deadband.provenance;

import deadband.document.Pointer;
import deadband.setup.Default;
import deadband.setup.Entered;
import deadband.setup.Part;
import deadband.setup.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A value derived from a setup that knows where it came from: from values entered, from documented
 * defaults, or not known for want of values.
 *
 * <p>Combining carries provenance along. Numbers are brought to their unit's resolution when made,
 * so that equal decimals are equal. Truths combine in three values: {@link #all} is false as soon
 * as one of them is known to be false, whatever the others are.
 *
 * <pre>{@code
 * Derived<Double> width = Derived.of(relay.start_kW())
 *     .with(Derived.of(relay.stop_kW()), (start, stop) -> Unit.KILOWATT.round(start - stop));
 * }</pre>
 */
public final class Derived<T> {

  private final @Nullable T value;
  private final Provenance provenance;

  private Derived(@Nullable T value, Provenance provenance) {
    this.value = value;
    this.provenance = provenance;
  }

  /** What is entered; else its documented default; else not known. */
  public static <T> Derived<T> of(Entered<T> entered) {
    if (entered.value() != null) {
      return new Derived<>(entered.value(), Provenance.entered(entered.pointer()));
    }
    Default<T> assumed = entered.assumed();
    return assumed == null
        ? missing(entered.pointer())
        : assumed(entered.pointer(), assumed.value(), assumed.because());
  }

  /** What is entered, and nothing in its stead. */
  public static <T> Derived<T> enteredOnly(Entered<T> entered) {
    return entered.value() == null
        ? missing(entered.pointer())
        : new Derived<>(entered.value(), Provenance.entered(entered.pointer()));
  }

  /** False where a part is entered as not fitted; true where it is there, or not entered. */
  public static Derived<Boolean> notAbsent(Part part) {
    return part.isFitted().says(false) ? of(part.isFitted()) : constant(true);
  }

  /** A value that does not depend on the setup. */
  public static <T> Derived<T> constant(T value) {
    return new Derived<>(value, Provenance.NONE);
  }

  /** A value taken in place of one not entered. */
  public static <T> Derived<T> assumed(Pointer pointer, T value, String basis) {
    Object taken = value;
    return new Derived<>(value, Provenance.assumed(new Assumption(pointer, taken, basis)));
  }

  /** A value that is not known for want of the one at this place. */
  public static <T> Derived<T> missing(Pointer pointer) {
    return new Derived<>(null, Provenance.missing(pointer));
  }

  /** A value that was not worked out, since nobody wanted it. */
  public static <T> Derived<T> leftOut() {
    return new Derived<>(null, Provenance.NONE);
  }

  /** A value made of others; not known where any of them is missing. */
  public static <T> Derived<T> from(Provenance provenance, Supplier<T> make) {
    return new Derived<>(provenance.isIncomplete() ? null : make.get(), provenance);
  }

  public boolean isKnown() {
    return value != null;
  }

  /** Whether it rests on a default. */
  public boolean isAssumed() {
    return provenance.restsOnDefaults();
  }

  /**
   * The value.
   *
   * @throws IllegalStateException where it is not known
   */
  public T get() {
    if (value == null) {
      throw new IllegalStateException("not known, missing: " + provenance.missing());
    }
    return value;
  }

  public Provenance provenance() {
    return provenance;
  }

  /** True where the value is known and passes. */
  public boolean is(Predicate<? super T> test) {
    return value != null && test.test(value);
  }

  public <R> Derived<R> map(Function<? super T, ? extends R> derive) {
    return new Derived<>(value == null ? null : derive.apply(value), provenance);
  }

  /** The value another leads to; known where both are. */
  public <R> Derived<R> then(Function<? super T, Derived<R>> derive) {
    if (value == null) {
      return new Derived<>(null, provenance);
    }
    Derived<R> next = derive.apply(value);
    return new Derived<>(next.value, provenance.and(next.provenance));
  }

  public <U, R> Derived<R> with(
      Derived<U> other, BiFunction<? super T, ? super U, ? extends R> derive) {
    Provenance both = provenance.and(other.provenance);
    if (value == null || other.value == null) {
      return new Derived<>(null, both);
    }
    return new Derived<>(derive.apply(value, other.value), both);
  }

  /** This where it is known, else the other; not known for want of both. */
  public Derived<T> or(Derived<T> other) {
    if (value != null) {
      return this;
    }
    return other.value != null ? other : new Derived<>(null, provenance.and(other.provenance));
  }

  /** The sum, at the unit's resolution. */
  public static Derived<Double> sum(Unit unit, Derived<Double> one, Derived<Double> other) {
    return one.with(other, (a, b) -> unit.round(a + b));
  }

  /** The first less the second, at the unit's resolution. */
  public static Derived<Double> difference(Unit unit, Derived<Double> one, Derived<Double> other) {
    return one.with(other, (a, b) -> unit.round(a - b));
  }

  /** The highest of those that are known; not known where none is. */
  public static Derived<Double> highestKnown(List<Derived<Double>> values) {
    List<Derived<Double>> known = values.stream().filter(Derived::isKnown).toList();
    if (known.isEmpty()) {
      return new Derived<>(null, together(values));
    }
    double highest = known.stream().mapToDouble(Derived::get).max().orElseThrow();
    return new Derived<>(highest, together(known));
  }

  private static Provenance together(List<? extends Derived<?>> values) {
    Provenance all = Provenance.NONE;
    for (Derived<?> value : values) {
      all = all.and(value.provenance);
    }
    return all;
  }

  /** What is missing of any of them. */
  public static List<Pointer> missingOf(List<? extends Derived<?>> values) {
    return together(values).missing();
  }

  /** True where all are true; false as soon as one is known to be. */
  @SafeVarargs
  @SuppressWarnings("varargs")
  public static Derived<Boolean> all(Derived<Boolean>... truths) {
    return decide(false, Arrays.asList(truths));
  }

  /** True as soon as one is known to be; false where all are false. */
  @SafeVarargs
  @SuppressWarnings("varargs")
  public static Derived<Boolean> any(Derived<Boolean>... truths) {
    return decide(true, Arrays.asList(truths));
  }

  public static Derived<Boolean> not(Derived<Boolean> truth) {
    return truth.map(known -> !known);
  }

  /** The first that decides, better without a default; else all of them together. */
  private static Derived<Boolean> decide(boolean decisive, List<Derived<Boolean>> truths) {
    Derived<Boolean> decided = null;
    boolean known = true;
    for (Derived<Boolean> truth : truths) {
      known &= truth.isKnown();
      if (truth.value != null && truth.value == decisive) {
        if (!truth.isAssumed()) {
          return truth;
        }
        decided = decided == null ? truth : decided;
      }
    }
    return decided != null ? decided : new Derived<>(known ? !decisive : null, together(truths));
  }

  @Override
  public String toString() {
    return value == null ? "not known, missing: " + provenance.missing() : value.toString();
  }
}
