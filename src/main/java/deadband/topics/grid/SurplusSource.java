package deadband.topics.grid;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether anything gives the surplus that a controller is to use. */
public record SurplusSource(Matter matter, boolean there) implements Case {}
