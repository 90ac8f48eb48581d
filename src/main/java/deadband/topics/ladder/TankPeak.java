package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The hottest the tank gets, tolerance included, against the supply of the valve. */
public record TankPeak(Matter matter, double peak_C, double hotSupplyMax_C) implements Case {}
