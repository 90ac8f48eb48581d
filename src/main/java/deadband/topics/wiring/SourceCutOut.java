package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether a heat source of the store has a cut-out of its own. */
public record SourceCutOut(Matter matter, boolean present) implements Case {}
