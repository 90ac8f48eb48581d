package deadband.topics.records;

import deadband.facts.Case;
import deadband.facts.Matter;

/** How many of the isolations that the work asks for are told not to have been made. */
public record IsolationRecord(Matter matter, int notConfirmed) implements Case {}
