package deadband.topics.thresholds;

import deadband.facts.Case;
import deadband.facts.Evidence;
import deadband.facts.Quantity;

/** The gap between the relay's thresholds, and the power of the element that it switches. */
public record ElementGap(Evidence evidence, Quantity width_kW, Quantity draw_kW) implements Case {}
