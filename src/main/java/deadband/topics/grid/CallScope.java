package deadband.topics.grid;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the surplus call raises the room heating too. */
public record CallScope(Matter matter, boolean heatsRooms) implements Case {}
