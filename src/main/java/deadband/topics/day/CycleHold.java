package deadband.topics.day;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the disinfection cycle, run by itself, holds its target. */
public record CycleHold(Matter matter, boolean held) implements Case {}
