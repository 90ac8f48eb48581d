package deadband.topics.metering;

import deadband.facts.Case;
import deadband.facts.Matter;

/** How many of the linked controllers lead. */
public record LinkedGroup(Matter matter, int leads) implements Case {}
