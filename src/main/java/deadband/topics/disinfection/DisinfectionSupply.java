package deadband.topics.disinfection;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether a disinfection waits for the sun. */
public record DisinfectionSupply(Matter matter, boolean onSurplusAlone) implements Case {}
