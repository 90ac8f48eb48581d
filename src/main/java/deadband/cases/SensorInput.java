package deadband.cases;

/**
 * One current-sensor input: whether a sensor is there, and whether the input is told that one is.
 */
public record SensorInput(Matter matter, boolean fitted, boolean assigned) implements Case {}
