package deadband.topics.thresholds;

import deadband.facts.Case;
import deadband.facts.Evidence;
import deadband.facts.Quantity;

/** The size of one threshold against the most a domestic supply carries. */
public record ThresholdSize(Evidence evidence, Quantity size_kW, double most_kW) implements Case {}
