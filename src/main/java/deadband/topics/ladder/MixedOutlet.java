package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** An outlet behind a mixing valve: what that is set to, and what it may give. */
public record MixedOutlet(Matter matter, double mixed_C, double most_C) implements Case {}
