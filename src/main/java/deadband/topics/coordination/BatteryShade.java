package deadband.topics.coordination;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The surplus that a battery takes before the relay sees it. */
public record BatteryShade(Matter matter, double hidden_kW) implements Case {}
