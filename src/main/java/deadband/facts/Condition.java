package deadband.facts;

import deadband.provenance.Provenance;

/** A fact that is so or is not: the relay calls the heat pump, export is counted. */
public interface Condition extends Fact {

  Answer answer();

  default boolean isYes() {
    return answer().isYes();
  }

  default boolean isNo() {
    return answer().isNo();
  }

  @Override
  default Provenance provenance() {
    return answer().provenance();
  }
}
