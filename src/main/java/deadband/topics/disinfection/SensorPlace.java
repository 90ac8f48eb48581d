package deadband.topics.disinfection;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Where the sensor that a disinfection watches sits, against the heater. */
public record SensorPlace(Matter matter, double sensor_mm, double heater_mm) implements Case {}
