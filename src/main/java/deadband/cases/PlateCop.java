package deadband.cases;

/** The COP that the entered powers give, against the highest that the lift allows. */
public record PlateCop(Matter matter, double cop, double most) implements Case {}
