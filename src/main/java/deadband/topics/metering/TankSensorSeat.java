package deadband.topics.metering;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether a tank sensor sits in a pocket. */
public record TankSensorSeat(Matter matter, boolean inPocket) implements Case {}
