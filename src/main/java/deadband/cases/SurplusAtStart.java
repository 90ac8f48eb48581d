package deadband.cases;

/** How far the surplus at which the relay closes falls short of the least draw. */
public record SurplusAtStart(Matter matter, Quantity short_kW, Quantity meterError_kW)
    implements Case {}
