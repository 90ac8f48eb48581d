package deadband.cases;

/** The breaker of a circuit, and what its cable carries. */
public record CableBreaker(Matter matter, double breaker_A, double cable_A) implements Case {}
