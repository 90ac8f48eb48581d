package deadband.topics.day;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the relay closes on any day of the seasons. */
public record StartInYear(Matter matter, boolean isReached) implements Case {}
