package deadband.topics.house;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The time at which a programme is to run, and how much of it is blocked. */
public record ProgrammeTime(Matter matter, double asked_min, double blocked_min) implements Case {}
