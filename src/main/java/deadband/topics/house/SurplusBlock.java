package deadband.topics.house;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The hours around noon in which the surplus programme is blocked, against those it may be. */
public record SurplusBlock(Matter matter, double blocked_min, double most_min) implements Case {}
