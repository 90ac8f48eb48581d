package deadband.cases;

/** Surface of the coil against what a heat pump of that output needs. */
public record CoilSurface(Matter matter, double area_m2, double least_m2) implements Case {}
