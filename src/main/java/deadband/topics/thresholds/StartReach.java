package deadband.topics.thresholds;

import deadband.facts.Case;
import deadband.facts.Evidence;
import deadband.facts.Quantity;

/** How far the start threshold lies beyond the most the relay can ever see. */
public record StartReach(Evidence evidence, Quantity beyond_kW, Quantity meterError_kW)
    implements Case {}
