package deadband.cases;

/** The rating entered for a cable or cord, against what such a conductor carries. */
public record EnteredRating(Matter matter, double entered_A, double most_A) implements Case {}
