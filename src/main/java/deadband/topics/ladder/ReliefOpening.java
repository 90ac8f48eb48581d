package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The opening temperature of the relief valve, and the least it must be. */
public record ReliefOpening(Matter matter, double relief_C, double least_C) implements Case {}
