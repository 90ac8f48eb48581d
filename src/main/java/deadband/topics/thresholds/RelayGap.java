package deadband.topics.thresholds;

import deadband.facts.Case;
import deadband.facts.Evidence;
import deadband.facts.Quantity;

/** The gap between the relay's thresholds, and what the heat pump takes away once it starts. */
public record RelayGap(Evidence evidence, Quantity width_kW, Quantity draw_kW) implements Case {}
