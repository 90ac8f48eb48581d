package deadband.cases;

/** Whether the call keeps the heat pump from running. */
public record CallMeaning(Matter matter, boolean blocks) implements Case {}
