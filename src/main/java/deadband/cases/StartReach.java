package deadband.cases;

/** The start threshold against the most the relay can ever see. */
public record StartReach(Matter matter, double start_kW, double reach_kW) implements Case {}
