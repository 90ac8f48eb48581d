package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** How long a day a circulation moves the water in its pipes, against the least that does. */
public record CirculationRest(Matter matter, double runs_min, double least_min) implements Case {}
