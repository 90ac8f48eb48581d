package deadband.topics.metering;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the grid sensor measures the phase the diverter feeds from. */
public record SensorPhase(Matter matter, boolean same) implements Case {}
