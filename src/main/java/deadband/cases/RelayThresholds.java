package deadband.cases;

/** The two thresholds of the relay. */
public record RelayThresholds(Matter matter, Quantity start_kW, Quantity stop_kW) implements Case {}
