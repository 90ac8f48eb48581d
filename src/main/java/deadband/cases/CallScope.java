package deadband.cases;

/** Whether the surplus call raises the room heating too. */
public record CallScope(Matter matter, boolean heatsRooms) implements Case {}
