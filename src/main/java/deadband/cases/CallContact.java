package deadband.cases;

/** Whether the contact that calls the heat pump carries no voltage of its own. */
public record CallContact(Matter matter, boolean voltFree) implements Case {}
