package deadband.cases;

/** Area of the coil for each kilowatt it is to pass on. */
public record CoilSurface(Matter matter, double area_m2, double least_m2) implements Case {}
