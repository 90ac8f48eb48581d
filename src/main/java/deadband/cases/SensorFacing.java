package deadband.cases;

/** Whether the direction of the grid sensor was checked. */
public record SensorFacing(Matter matter, boolean checked) implements Case {}
