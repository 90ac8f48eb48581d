package deadband.topics.coordination;

import deadband.facts.Case;
import deadband.facts.Matter;

/** What the relay sees while a battery carries the heat pump, against the stop. */
public record BatteryFeed(Matter matter, double seen_kW, double stop_kW) implements Case {}
