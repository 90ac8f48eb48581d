package deadband.topics.house;

import deadband.facts.Case;
import deadband.facts.Matter;

/** How long the secondary circulation runs in a day, and the most it may. */
public record CirculationTime(Matter matter, double runs_min, double most_min) implements Case {}
