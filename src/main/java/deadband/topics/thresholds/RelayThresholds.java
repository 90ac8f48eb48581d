package deadband.topics.thresholds;

import deadband.facts.Case;
import deadband.facts.Matter;
import deadband.facts.Quantity;

/** The two thresholds of the relay. */
public record RelayThresholds(Matter matter, Quantity start_kW, Quantity stop_kW) implements Case {}
