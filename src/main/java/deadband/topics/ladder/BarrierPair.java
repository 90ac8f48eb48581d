package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Two barriers of one heat source, the first of which must act first. */
public record BarrierPair(Matter matter, double first_C, double next_C) implements Case {}
