package deadband.cases;

/** Whether the grid sensor measures what the heat pump draws. */
public record MeteredPump(Matter matter, boolean behindSensor) implements Case {}
