package deadband.cases;

/** How far the start threshold lies beyond the most the relay can ever see. */
public record StartReach(Matter matter, Quantity beyond_kW, Quantity meterError_kW)
    implements Case {}
