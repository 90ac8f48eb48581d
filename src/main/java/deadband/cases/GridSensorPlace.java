package deadband.cases;

/** Whether a sensor measures at the supply at all. */
public record GridSensorPlace(Matter matter, boolean present) implements Case {}
