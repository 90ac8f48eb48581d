package deadband.cases;

/** Whether two that follow one surplus have an order between them. */
public record SharedSurplus(Matter matter, boolean ordered) implements Case {}
