package deadband.cases;

/** How far the surplus at which the relay closes falls short of the least draw. */
public record SurplusAtStart(Matter matter, double short_kW, double meterError_kW)
    implements Case {}
