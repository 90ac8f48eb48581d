package deadband.cases;

/** How many of the linked controllers lead. */
public record LinkedGroup(Matter matter, int leads) implements Case {}
