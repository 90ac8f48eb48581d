package deadband.topics.thresholds;

import deadband.facts.Case;
import deadband.facts.Matter;
import deadband.facts.Quantity;

/** How far the surplus at which the relay closes falls short of the least draw. */
public record SurplusAtStart(Matter matter, Quantity short_kW, Quantity meterError_kW)
    implements Case {}
