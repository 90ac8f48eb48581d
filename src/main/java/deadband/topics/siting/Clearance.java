package deadband.topics.siting;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The free space on one side of the diverter, against what its instructions ask for. */
public record Clearance(Matter matter, double free_mm, double needed_mm) implements Case {}
