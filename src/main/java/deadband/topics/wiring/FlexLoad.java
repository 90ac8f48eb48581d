package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** What the heater draws, and what its flexible cord carries. */
public record FlexLoad(Matter matter, double current_A, double flex_A) implements Case {}
