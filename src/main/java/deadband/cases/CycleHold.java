package deadband.cases;

/** Whether the disinfection cycle, run by itself, holds its target. */
public record CycleHold(Matter matter, boolean held) implements Case {}
