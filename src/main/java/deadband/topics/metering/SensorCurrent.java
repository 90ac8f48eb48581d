package deadband.topics.metering;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The highest current on one phase through the grid sensor, against its rated one. */
public record SensorCurrent(Matter matter, double current_A, double rated_A) implements Case {}
