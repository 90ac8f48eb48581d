package deadband.topics.cycling;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The longest run the tank can give the heat pump, against the least it needs. */
public record TankOutput(Matter matter, double run_min, double least_min) implements Case {}
