package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the contact that calls the heat pump carries no voltage of its own. */
public record CallContact(Matter matter, boolean voltFree) implements Case {}
