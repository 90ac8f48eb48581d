package deadband.facts;

import deadband.provenance.Provenance;
import java.util.List;

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
  default List<Provenance> behind() {
    return List.of(answer().provenance());
  }
}
