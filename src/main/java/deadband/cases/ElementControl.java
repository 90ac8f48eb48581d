package deadband.cases;

/** Where a control of the element opens, against the disinfection it must let through. */
public record ElementControl(Matter matter, double opens_C, double target_C) implements Case {}
