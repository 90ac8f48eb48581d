package deadband.cases;

/** Whether a heat source of the store has a cut-out of its own. */
public record SourceCutOut(Matter matter, boolean present) implements Case {}
