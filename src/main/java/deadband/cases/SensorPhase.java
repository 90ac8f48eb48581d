package deadband.cases;

/** Whether a sensor on one phase sits on the phase that feeds the diverter. */
public record SensorPhase(Matter matter, boolean same) implements Case {}
