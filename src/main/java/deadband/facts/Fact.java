package deadband.facts;

import deadband.provenance.Provenance;
import java.util.List;

/** A thing an engineer would name, derived once from a setup, that rules look at. */
public interface Fact {

  /** Where its values come from, one for each. */
  List<Provenance> behind();
}
