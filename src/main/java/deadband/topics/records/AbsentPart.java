package deadband.topics.records;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether a part entered as not fitted is described or relied on all the same. */
public record AbsentPart(Matter matter, boolean contradicted) implements Case {}
