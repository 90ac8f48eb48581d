package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the wiring of the call is kept apart from mains. */
public record CallCable(Matter matter, boolean segregated) implements Case {}
