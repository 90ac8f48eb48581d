package deadband.cases;

/** A thing an engineer would name, derived once from a setup, that rules look at. */
public interface Fact {

  /** Where it comes from. */
  Provenance provenance();
}
