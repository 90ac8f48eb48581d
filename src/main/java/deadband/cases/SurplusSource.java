package deadband.cases;

/** Whether anything gives the surplus that a controller is to use. */
public record SurplusSource(Matter matter, boolean there) implements Case {}
