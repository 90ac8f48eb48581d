package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The coolest everyday supply of the mixing valve, and the least it needs. */
public record HotSupply(Matter matter, double supply_C, double least_C) implements Case {}
