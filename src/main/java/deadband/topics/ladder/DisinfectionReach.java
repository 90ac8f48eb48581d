package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** What the tank is let reach where the immersion heater disinfects, and what that needs. */
public record DisinfectionReach(Matter matter, double reached_C, double needed_C) implements Case {}
