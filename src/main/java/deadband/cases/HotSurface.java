package deadband.cases;

/** Whether a hot surface lies below the diverter. */
public record HotSurface(Matter matter, boolean below) implements Case {}
