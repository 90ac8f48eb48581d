package deadband.cases;

/** The warmest air around the diverter, against what it is rated for. */
public record AmbientAir(Matter matter, double warmest_C, double rated_C) implements Case {}
