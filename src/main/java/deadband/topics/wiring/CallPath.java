package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the relay cuts the supply of the heat pump instead of calling it. */
public record CallPath(Matter matter, boolean cutsSupply) implements Case {}
