package deadband.cases;

/** Whether a tank sensor sits in a pocket. */
public record TankSensorSeat(Matter matter, boolean inPocket) implements Case {}
