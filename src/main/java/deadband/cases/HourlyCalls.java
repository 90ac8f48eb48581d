package deadband.cases;

/** How often the relay calls in the worst hour of the days run, against what the plate allows. */
public record HourlyCalls(Matter matter, double calls, double allowed) implements Case {}
