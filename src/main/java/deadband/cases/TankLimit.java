package deadband.cases;

import deadband.document.Pointer;
import deadband.setup.Diverter;
import deadband.setup.Setup;
import deadband.setup.Unit;
import java.util.List;

/**
 * The temperatures at which the diverter stops feeding the heater and takes up again.
 *
 * <p>It opens at the limit where the hysteresis lies below it, and at limit + hysteresis where it
 * lies on both sides; it closes again at limit − hysteresis. Where the side is not told, the lower
 * opening is the one to judge hygiene by and the higher one scald.
 */
final class TankLimit {

  private final Diverter diverter;

  TankLimit(Setup setup) {
    this.diverter = setup.diverter();
  }

  Derived<Double> limit_C() {
    return Derived.of(diverter.limit_C());
  }

  /** The temperature at which it opens; the lower of the two where the side is not told. */
  Derived<Double> lowestOpening_C() {
    return onBothSides(false) ? highest_C() : limit_C();
  }

  /** The temperature at which it opens; the higher of the two where the side is not told. */
  Derived<Double> highestOpening_C() {
    return onBothSides(true) ? highest_C() : limit_C();
  }

  /** What must be told before the opening temperature is sure. */
  List<Pointer> open() {
    return Derived.toldOnly(diverter.hysteresisLies()).provenance().missing();
  }

  /** The temperature at which it closes again. */
  Derived<Double> closing_C() {
    return Derived.difference(Unit.CELSIUS, limit_C(), Derived.of(diverter.hysteresis_K()));
  }

  private Derived<Double> highest_C() {
    return Derived.sum(Unit.CELSIUS, limit_C(), Derived.of(diverter.hysteresis_K()));
  }

  private boolean onBothSides(boolean whereNotTold) {
    return diverter
        .hysteresisLies()
        .optional()
        .map(side -> side == Diverter.HysteresisLies.BOTH)
        .orElse(whereNotTold);
  }
}
