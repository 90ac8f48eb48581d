package deadband.cases;

/** The volt drop along the cable of the heater, and the most it may be. */
public record VoltDrop(Matter matter, double drop_V, double most_V) implements Case {}
