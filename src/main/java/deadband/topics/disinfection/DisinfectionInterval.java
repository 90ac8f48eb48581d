package deadband.topics.disinfection;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The days from one disinfection to the next, against the most the cycle allows. */
public record DisinfectionInterval(Matter matter, double every_days, double most_days)
    implements Case {}
