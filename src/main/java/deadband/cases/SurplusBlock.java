package deadband.cases;

/** The hours around noon in which the surplus programme is blocked, against those it may be. */
public record SurplusBlock(Matter matter, double blocked_min, double most_min) implements Case {}
