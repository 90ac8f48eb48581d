package deadband.topics.day;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether on every day of the seasons the element has the tank warm before the relay closes. */
public record HeaterFirst(Matter matter, boolean callIsIdle) implements Case {}
