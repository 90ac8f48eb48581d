package deadband.cases;

/** Whether the relay closes on any day of the seasons. */
public record StartInYear(Matter matter, boolean isReached) implements Case {}
