package deadband.topics.house;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Starts an hour as observed, which the settings as found do not explain, against the most. */
public record ObservedStarts(Matter matter, double starts, double most) implements Case {}
