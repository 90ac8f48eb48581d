package deadband.cases;

/** Whether the relay calls the heat pump whose surplus input is entered. */
public record CallTarget(Matter matter, boolean called) implements Case {}
