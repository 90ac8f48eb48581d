package deadband.topics.siting;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The warmest air around the diverter, against what it is rated for. */
public record AmbientAir(Matter matter, double warmest_C, double rated_C) implements Case {}
