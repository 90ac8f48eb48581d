package deadband.loop;

import deadband.provenance.Derived;
import deadband.provenance.Provenance;
import deadband.setup.Entered;
import java.util.function.Supplier;

/**
 * Gathers many values into one, with the provenance of all.
 *
 * <pre>{@code
 * Gathered parts = new Gathered();
 * Derived<Double> volume = parts.with(Derived.of(tank.volume_L()));
 * Derived<Spec> spec = parts.into(() -> new Spec(volume.get()));
 * }</pre>
 */
public final class Gathered {

  private Provenance provenance = Provenance.NONE;

  /** Adds a value; handed back to be read once all are known. */
  public <T> Derived<T> with(Derived<T> value) {
    provenance = provenance.and(value.provenance());
    return value;
  }

  /** Adds what is entered, or its documented default. */
  public <T> Derived<T> with(Entered<T> entered) {
    return with(Derived.of(entered));
  }

  /** Adds what is entered, or else what this day run takes in its stead. */
  public <T> Derived<T> with(Entered<T> entered, T taken, String basis) {
    return with(Derived.of(entered).or(Derived.assumed(entered.pointer(), taken, basis)));
  }

  /** What they make; not known where any of them is missing. */
  public <T> Derived<T> into(Supplier<T> make) {
    return Derived.from(provenance, make);
  }
}
