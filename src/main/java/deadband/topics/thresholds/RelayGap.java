package deadband.topics.thresholds;

import deadband.facts.Case;
import deadband.facts.Matter;
import deadband.facts.Quantity;

/** The gap between the relay's thresholds, and what the heat pump takes away once it starts. */
public record RelayGap(Matter matter, Quantity width_kW, Quantity draw_kW) implements Case {}
