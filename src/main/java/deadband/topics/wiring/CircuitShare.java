package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the heater has a circuit of its own. */
public record CircuitShare(Matter matter, boolean own) implements Case {}
