package deadband.topics.day;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The shortest run of a clear and a cloudy day, against the heat pump's own minimum run. */
public record ShortRuns(Matter matter, double shortest_min, double minimum_min) implements Case {}
