package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** An outlet without a mixing valve: the hottest the tank gets, and what it may give. */
public record OpenOutlet(Matter matter, double peak_C, double most_C) implements Case {}
