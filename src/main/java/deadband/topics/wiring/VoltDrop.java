package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The volt drop along the cable of the heater, and the most it may be. */
public record VoltDrop(Matter matter, double drop_V, double most_V) implements Case {}
