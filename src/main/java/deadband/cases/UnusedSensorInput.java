package deadband.cases;

/** Whether an input without a sensor is left assigned to something. */
public record UnusedSensorInput(Matter matter, boolean assigned) implements Case {}
