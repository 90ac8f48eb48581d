package deadband.topics.grid;

import deadband.facts.Case;
import deadband.facts.Matter;

/** How long a day a timer feeds the element from the grid, and how long it needs to. */
public record TimedElement(Matter matter, double timed_min, double needed_min) implements Case {}
