package deadband.topics.grid;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether what the grid sensor sees is what the meter bills for a surplus call. */
public record BilledPhases(Matter matter, boolean seen) implements Case {}
