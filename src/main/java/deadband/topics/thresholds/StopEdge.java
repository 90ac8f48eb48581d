package deadband.topics.thresholds;

import deadband.facts.Case;
import deadband.facts.Evidence;
import deadband.facts.Quantity;

/** What is bought while the relay still holds the call. */
public record StopEdge(Evidence evidence, Quantity import_kW, Quantity tolerated_kW)
    implements Case {}
