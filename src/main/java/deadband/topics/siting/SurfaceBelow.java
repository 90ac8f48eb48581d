package deadband.topics.siting;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether a hot surface lies below the diverter. */
public record SurfaceBelow(Matter matter, boolean hot) implements Case {}
