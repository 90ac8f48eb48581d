package deadband.facts;

import deadband.provenance.Provenance;
import java.util.List;

/**
 * One subject that a check looks at, with its values known or open: the relay's gap, one
 * temperature programme, one outlet. A rule joins conditions with one case and compares.
 */
public interface Case extends Fact {

  /** What stands behind the values. */
  Evidence evidence();

  @Override
  default List<Provenance> behind() {
    return evidence().behind();
  }
}
