package deadband.topics.grid;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The phases the heat pump draws from, against those the sun feeds. */
public record PhaseSpread(Matter matter, double drawn, double fed) implements Case {}
