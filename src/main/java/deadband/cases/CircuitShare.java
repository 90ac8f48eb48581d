package deadband.cases;

/** Whether the heater has a circuit of its own. */
public record CircuitShare(Matter matter, boolean own) implements Case {}
