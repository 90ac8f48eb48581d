package deadband.topics.thresholds;

import deadband.facts.Case;
import deadband.facts.Evidence;
import deadband.facts.Quantity;

/** What one cloud to zero surplus can cost while the stop delay runs. */
public record CloudCost(Evidence evidence, Quantity bought_kWh, double tolerated_kWh)
    implements Case {}
