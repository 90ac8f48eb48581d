package deadband.cases;

/** How many of the linked controllers lead. */
public record LeadCount(Matter matter, int leads) implements Case {}
