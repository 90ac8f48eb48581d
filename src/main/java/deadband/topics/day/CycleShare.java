package deadband.topics.day;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The share of the store that the disinfection cycle, run by itself, holds at its target. */
public record CycleShare(Matter matter, double share, double least) implements Case {}
