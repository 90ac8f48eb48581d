package deadband.topics.thresholds;

import deadband.facts.Case;
import deadband.facts.Evidence;
import deadband.facts.Quantity;

/** The two thresholds of the relay. */
public record RelayThresholds(Evidence evidence, Quantity start_kW, Quantity stop_kW)
    implements Case {}
