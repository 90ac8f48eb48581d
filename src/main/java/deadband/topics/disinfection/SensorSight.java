package deadband.topics.disinfection;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The share of the store below the sensor that a disinfection watches. */
public record SensorSight(Matter matter, double below, double most) implements Case {}
