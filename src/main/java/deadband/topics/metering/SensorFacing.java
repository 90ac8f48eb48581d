package deadband.topics.metering;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the direction of the grid sensor was checked. */
public record SensorFacing(Matter matter, boolean checked) implements Case {}
