package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The coolest everyday supply of a blended outlet, and the temperature it is mixed to. */
public record MixedSupply(Matter matter, double supply_C, double mixed_C) implements Case {}
