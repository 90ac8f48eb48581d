package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The coolest the store rests at, and the top of the growth band. */
public record RestingStore(Matter matter, double rest_C, double growthBandTop_C) implements Case {}
