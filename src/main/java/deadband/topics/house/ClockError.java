package deadband.topics.house;

import deadband.facts.Case;
import deadband.facts.Matter;

/** How far a clock is off, and the most it may be. */
public record ClockError(Matter matter, double off_min, double most_min) implements Case {}
