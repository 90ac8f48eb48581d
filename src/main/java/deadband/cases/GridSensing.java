package deadband.cases;

/** Whether anything measures the exchange with the grid. */
public record GridSensing(Matter matter, boolean sensed) implements Case {}
