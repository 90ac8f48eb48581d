package deadband.cases;

/** Whether the wiring of the call is kept apart from mains. */
public record CallCable(Matter matter, boolean segregated) implements Case {}
