package deadband.cases;

/** How long a day a timer feeds the element from the grid, and how long it needs to. */
public record TimedElement(Matter matter, double timed_min, double needed_min) implements Case {}
