package deadband.facts;

import deadband.provenance.Provenance;

/** A thing an engineer would name, derived once from a setup, that rules look at. */
public interface Fact {

  /** Where it comes from. */
  Provenance provenance();
}
