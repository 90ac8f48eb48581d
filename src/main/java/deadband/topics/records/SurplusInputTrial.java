package deadband.topics.records;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the surplus input of the heat pump was tried and seen to work. */
public record SurplusInputTrial(Matter matter, boolean confirmed) implements Case {}
