package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The shortest call that a relay can make, and the shortest that the input asks for. */
public record CallHold(Matter matter, double shortest_min, double least_min) implements Case {}
