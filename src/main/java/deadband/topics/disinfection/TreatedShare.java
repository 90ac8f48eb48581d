package deadband.topics.disinfection;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The share of the store that a disinfection reaches, against the share it must. */
public record TreatedShare(Matter matter, double treated, double needed) implements Case {}
