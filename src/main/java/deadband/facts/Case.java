package deadband.facts;

import deadband.provenance.Provenance;

/**
 * One subject that a check looks at, as plain numbers: the relay's gap, one temperature programme,
 * one outlet. A rule matches one case and compares; a match is a violation.
 */
public interface Case extends Fact {

  /** What stands behind the numbers. */
  Matter matter();

  @Override
  default Provenance provenance() {
    return matter().provenance();
  }
}
