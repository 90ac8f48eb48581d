package deadband.cases;

/** What is bought while the relay still holds the call. */
public record StopEdge(Matter matter, Quantity import_kW, Quantity tolerated_kW) implements Case {}
