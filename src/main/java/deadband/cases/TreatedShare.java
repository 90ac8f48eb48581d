package deadband.cases;

/** The share of the store that a disinfection reaches, against the share it must. */
public record TreatedShare(Matter matter, double treated, double needed) implements Case {}
