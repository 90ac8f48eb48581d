package deadband.topics.house;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The height of a sensor that ends a heating, against the lower edge of what it switches. */
public record ControlSensor(Matter matter, double sensor_mm, double heater_mm) implements Case {}
