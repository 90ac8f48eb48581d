package deadband.topics.disinfection;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the signal of a demand is of the kind its input accepts. */
public record DemandSignal(Matter matter, boolean accepted) implements Case {}
