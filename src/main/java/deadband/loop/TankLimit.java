package deadband.loop;

import deadband.document.Pointer;
import deadband.provenance.Derived;
import deadband.setup.Diverter;
import deadband.setup.Diverter.HysteresisLies;
import deadband.setup.Setup;
import deadband.setup.Unit;
import java.util.List;

/**
 * The temperatures at which the diverter stops feeding the heater and takes up again.
 *
 * <p>It opens at the limit where the hysteresis lies below it, and at limit + hysteresis where it
 * lies on both sides; it closes again at limit − hysteresis. Where the side is not entered, the
 * lower opening is the one to judge hygiene by and the higher one scald.
 */
public final class TankLimit {

  private final Diverter diverter;

  public TankLimit(Setup setup) {
    this.diverter = setup.diverter();
  }

  public Derived<Double> limit_C() {
    return Derived.of(diverter.limit_C());
  }

  /** The temperature at which it opens; not known while the side is not entered and matters. */
  public Derived<Double> opening_C() {
    if (diverter.hysteresis_K().says(0.0)) {
      return limit_C();
    }
    return limit_C()
        .then(limit -> Derived.of(diverter.hysteresisLies()))
        .then(side -> side == HysteresisLies.BOTH ? highest_C() : limit_C());
  }

  /** The lowest temperature at which it may open. */
  public Derived<Double> lowestOpening_C() {
    return opening_C().isKnown() ? opening_C() : limit_C();
  }

  /** The highest temperature at which it may open. */
  public Derived<Double> highestOpening_C() {
    return opening_C().isKnown() ? opening_C() : highest_C();
  }

  /** What must be entered before the opening temperature is sure. */
  public List<Pointer> open() {
    return opening_C().provenance().missing();
  }

  /** The temperature at which it closes again. */
  public Derived<Double> closing_C() {
    return Derived.difference(Unit.CELSIUS, limit_C(), Derived.of(diverter.hysteresis_K()));
  }

  private Derived<Double> highest_C() {
    return Derived.sum(Unit.CELSIUS, limit_C(), Derived.of(diverter.hysteresis_K()));
  }
}
