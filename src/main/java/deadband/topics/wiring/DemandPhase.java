package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether a demand signal at mains comes from the phase of the diverter. */
public record DemandPhase(Matter matter, boolean same) implements Case {}
