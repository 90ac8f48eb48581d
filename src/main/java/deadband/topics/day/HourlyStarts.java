package deadband.topics.day;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Starts of the compressor in the worst hour of the days run, against what it is allowed. */
public record HourlyStarts(Matter matter, double starts, double allowed) implements Case {}
