package deadband.topics.wiring;

import deadband.facts.Bound;
import deadband.facts.Measure;
import deadband.limits.Limits;
import deadband.provenance.Derived;
import deadband.setup.Setup;
import deadband.trade.Known;

/**
 * Limits that British texts set: firm on a site in Great Britain. Elsewhere, and where the country
 * is not entered, the same number is only remembered to hold, and what rests on it is a question.
 */
final class BritishText {

  private static final String BRITAIN = "GB";

  private BritishText() {}

  /** Whether the site is known to stand in Great Britain. */
  static Derived<Boolean> holds(Setup setup) {
    return Derived.of(setup.site().country()).map(country -> country.code().equals(BRITAIN));
  }

  /** A limit that such a text sets, by its name. */
  static Bound bound(Setup setup, Measure measure, String name, String source, Known known) {
    return holds(setup).is(british -> british)
        ? Bound.sourced(measure, name, source, known)
        : Bound.sourced(measure, name, source + "; elsewhere from memory", Known.MEMORY);
  }

  /** A limit out of the table; one that the site sets for itself holds anywhere. */
  static Bound bound(Setup setup, Measure measure, Limits.Entry entry) {
    return entry.known() == Known.READ
        ? Bound.sourced(measure, entry.name(), entry.source(), entry.known())
        : bound(setup, measure, entry.name(), entry.source(), entry.known());
  }
}
