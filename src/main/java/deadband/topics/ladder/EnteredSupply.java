package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The hottest supply entered for a mixing valve, against what its type is certified for. */
public record EnteredSupply(Matter matter, double entered_C, double certified_C) implements Case {}
