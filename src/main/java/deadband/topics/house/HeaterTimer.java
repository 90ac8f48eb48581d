package deadband.topics.house;

import deadband.facts.Case;
import deadband.facts.Matter;

/** How long after the run of the heat pump a timer feeds the heater, and the most it may be. */
public record HeaterTimer(Matter matter, double afterRun_min, double most_min) implements Case {}
