package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the call keeps the heat pump from running. */
public record CallMeaning(Matter matter, boolean blocks) implements Case {}
