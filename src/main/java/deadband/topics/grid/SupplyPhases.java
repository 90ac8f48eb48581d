package deadband.topics.grid;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The phases in use, against those the supply is entered with. */
public record SupplyPhases(Matter matter, double used, double supplied) implements Case {}
