package deadband.cases;

/** Whether a hot surface lies below the diverter. */
public record SurfaceBelow(Matter matter, boolean hot) implements Case {}
