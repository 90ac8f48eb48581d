package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** How far the diverter opens above the disinfection target, and how far its sensor may err. */
public record DisinfectionMargin(Matter matter, double spare_K, double tolerance_K)
    implements Case {}
