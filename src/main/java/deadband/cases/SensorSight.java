package deadband.cases;

/** The share of the store below the sensor that a disinfection watches. */
public record SensorSight(Matter matter, double below, double most) implements Case {}
