package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The rating entered for a cable or cord, against what such a conductor carries. */
public record EnteredRating(Matter matter, double entered_A, double most_A) implements Case {}
