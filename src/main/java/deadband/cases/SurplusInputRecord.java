package deadband.cases;

/** Whether the heat pump's surplus input was tried and seen to work. */
public record SurplusInputRecord(Matter matter, boolean confirmed) implements Case {}
