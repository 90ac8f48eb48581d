package deadband.topics.disinfection;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The temperature a disinfection heats to, against what the compressor reaches. */
public record DisinfectionOfPump(Matter matter, double target_C, double reach_C) implements Case {}
