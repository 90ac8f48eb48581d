package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The stop of a programme, and the most the compressor reaches. */
public record ProgrammeReach(Matter matter, double stop_C, double reach_C) implements Case {}
