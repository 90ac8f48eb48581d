package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The run that one swing of the tank gives the compressor. */
public record TankRun(Matter matter, double run_min, double minimumRun_min) implements Case {}
