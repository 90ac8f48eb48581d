package deadband.topics.metering;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether anything measures the exchange with the grid. */
public record GridSensing(Matter matter, boolean sensed) implements Case {}
