package deadband.topics.day;

import deadband.facts.Case;
import deadband.facts.Matter;

/** How long of a day a store that nothing disinfects stands in the growth band. */
public record GrowthBandTime(Matter matter, double time_min, double most_min) implements Case {}
