package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Start and stop of a temperature programme. */
public record ProgrammeSwing(Matter matter, double start_C, double stop_C) implements Case {}
