package deadband.cases;

/** Whether an outlet at which people wash is listed. */
public record WashingOutlet(Matter matter, boolean listed) implements Case {}
