package deadband.topics.records;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether a mains demand signal into the diverter was isolated and proved dead. */
public record MainsDemand(Matter matter, boolean dead) implements Case {}
