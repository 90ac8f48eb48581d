package deadband.topics.thresholds;

import deadband.facts.Case;
import deadband.facts.Matter;
import deadband.facts.Quantity;

/** The size of one threshold against the most a domestic supply carries. */
public record ThresholdSize(Matter matter, Quantity size_kW, double most_kW) implements Case {}
