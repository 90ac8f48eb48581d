package deadband.cases;

/** The surplus that is there at least when the relay closes. */
public record SurplusAtStart(Matter matter, double surplus_kW, double leastDraw_kW)
    implements Case {}
