package deadband.cases;

/** The run that one swing of the tank gives the compressor. */
public record TankRun(Matter matter, double run_min, double minimumRun_min) implements Case {}
