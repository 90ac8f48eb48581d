package deadband.cases;

/** Free space on one side of the diverter, against what its instructions ask for. */
public record Clearance(Matter matter, double space_mm, double needed_mm) implements Case {}
