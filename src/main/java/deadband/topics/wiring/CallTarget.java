package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the relay calls the heat pump whose surplus input is entered. */
public record CallTarget(Matter matter, boolean called) implements Case {}
