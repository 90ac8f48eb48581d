package deadband.topics.day;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The share of the compressor's runs that nothing but its own minimum run kept going. */
public record TimerRuns(Matter matter, double share, double most) implements Case {}
