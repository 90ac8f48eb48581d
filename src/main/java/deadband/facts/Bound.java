package deadband.facts;

import deadband.limits.Limits;
import deadband.setup.Entered;
import deadband.setup.Unit;
import deadband.trade.Known;

/**
 * What an observed quantity is held against.
 *
 * @param measure the limit itself
 * @param name of the limit in the table, or pointer of the value entered
 * @param source where the limit comes from
 * @param known how it is known, in words
 * @param firm whether it may carry a hazard, damage or waste: entered, read off a plate, or set by
 *     regulation or standard, and broken by the value set. What breaks common practice, memory or a
 *     tolerance alone is a query
 * @param byToleranceAlone whether the value set keeps it, so that no change of it is a remedy
 */
public record Bound(
    Measure measure,
    String name,
    String source,
    String known,
    boolean firm,
    boolean byToleranceAlone) {

  /** The source of a limit that the setup itself tells. */
  public static final String THIS_SETUP = "this setup";

  /** How a limit is known that stands in for a value not entered. */
  public static final String ASSUMED = "assumed";

  /** A limit that the value set breaks. */
  public Bound(Measure measure, String name, String source, String known, boolean firm) {
    this(measure, name, source, known, firm, false);
  }

  /** A limit out of the table. */
  public static Bound of(String quantity, double value, Limits.Entry limit) {
    return of(quantity, value, limit, limit.unit());
  }

  /** The same limit where it is a recommendation: exceeding it is a question. */
  public Bound advised() {
    return new Bound(measure, name, source, known, false);
  }

  /** A limit out of the table that is a share, shown in per cent. */
  public static Bound share(String quantity, Limits.Entry limit) {
    return new Bound(
        Measure.of(quantity, 100 * limit.value(), "%"),
        limit.name(),
        limit.source(),
        limit.known().words(),
        limit.isFirm());
  }

  /** A limit calculated with one out of the table, in a unit of its own. */
  public static Bound of(String quantity, double value, Limits.Entry limit, Unit unit) {
    return new Bound(
        Measure.of(quantity, value, unit),
        limit.name(),
        limit.source(),
        limit.known().words(),
        limit.isFirm());
  }

  /** A limit that a document sets; firm where {@link Known#isFirm} says so. */
  public static Bound sourced(Measure measure, String name, String source, Known known) {
    return new Bound(measure, name, source, known.words(), known.isFirm());
  }

  /** This limit, which may carry a hazard in this case or not. */
  public Bound firmIf(boolean mayCarryHazard) {
    return new Bound(measure, name, source, known, mayCarryHazard);
  }

  /** A limit that the setup itself tells. */
  public static Bound entered(String quantity, double value, Unit unit, Entered<?> by) {
    return new Bound(
        Measure.of(quantity, value, unit), by.pointer().dotted(), THIS_SETUP, "as entered", true);
  }

  /** A limit that stands in for one not entered: it may raise a question, nothing more. */
  public static Bound assumed(String quantity, double value, Unit unit, String basis) {
    return new Bound(Measure.of(quantity, value, unit), basis, THIS_SETUP, ASSUMED, false);
  }

  /** This limit where the value set keeps it, and only a tolerance breaks it. */
  public Bound brokenByToleranceAlone() {
    return new Bound(measure, name, source, known + "; exceeded by tolerance alone", false, true);
  }

  /** The same limit where what exceeds it is not certain to: it carries a question, no hazard. */
  public Bound asked() {
    return new Bound(measure, name, source, known, false);
  }

  /** A limit calculated from values entered. */
  public static Bound calculated(String quantity, double value, Unit unit, String how) {
    return new Bound(Measure.of(quantity, value, unit), how, THIS_SETUP, "calculated", true);
  }
}
