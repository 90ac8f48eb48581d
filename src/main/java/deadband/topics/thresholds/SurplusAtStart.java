package deadband.topics.thresholds;

import deadband.facts.Case;
import deadband.facts.Evidence;
import deadband.facts.Quantity;

/** How far the surplus at which the relay closes falls short of the least draw. */
public record SurplusAtStart(Evidence evidence, Quantity short_kW, Quantity meterError_kW)
    implements Case {}
