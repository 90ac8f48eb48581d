package deadband.cases;

/** Whether a disinfection waits for the sun. */
public record DisinfectionSupply(Matter matter, boolean onSurplusAlone) implements Case {}
