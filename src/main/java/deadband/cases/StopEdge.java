package deadband.cases;

/** What is bought while the relay still holds the call. */
public record StopEdge(Matter matter, double import_kW, double tolerated_kW) implements Case {}
