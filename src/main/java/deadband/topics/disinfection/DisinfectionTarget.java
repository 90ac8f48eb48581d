package deadband.topics.disinfection;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The temperature a disinfection heats to, against the lowest the cycle takes. */
public record DisinfectionTarget(Matter matter, double target_C, double least_C) implements Case {}
