package deadband.cases;

/** The two thresholds of the relay. */
public record RelayThresholds(Matter matter, double start_kW, double stop_kW) implements Case {}
