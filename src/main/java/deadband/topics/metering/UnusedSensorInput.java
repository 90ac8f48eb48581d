package deadband.topics.metering;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether an input without a sensor is left assigned to something. */
public record UnusedSensorInput(Matter matter, boolean assigned) implements Case {}
