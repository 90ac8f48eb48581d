package deadband.topics.coordination;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the battery may discharge into the immersion heater. */
public record BatteryHeat(Matter matter, boolean discharges) implements Case {}
