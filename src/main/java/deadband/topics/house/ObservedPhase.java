package deadband.topics.house;

import deadband.facts.Case;
import deadband.facts.Matter;

/** A run, a pause or a whole cycle as observed, against what the heat pump's timers allow. */
public record ObservedPhase(Matter matter, double seen_min, double least_min) implements Case {}
