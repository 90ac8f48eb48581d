package deadband.topics.metering;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the resistance of a tank sensor and the temperature displayed agree. */
public record TankSensorReading(Matter matter, boolean agrees) implements Case {}
