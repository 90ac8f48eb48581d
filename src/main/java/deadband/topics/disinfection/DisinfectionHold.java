package deadband.topics.disinfection;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The time a disinfection holds its target, against the shortest the cycle takes. */
public record DisinfectionHold(Matter matter, double hold_min, double least_min) implements Case {}
