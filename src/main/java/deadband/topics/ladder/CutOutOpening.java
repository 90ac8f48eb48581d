package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The temperature at which a cut-out acts, against the highest that one is made for. */
public record CutOutOpening(Matter matter, double acts_C, double most_C) implements Case {}
