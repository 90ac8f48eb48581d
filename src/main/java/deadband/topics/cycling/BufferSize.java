package deadband.topics.cycling;

import deadband.facts.Case;
import deadband.facts.Matter;

/** What buffer and system hold, against what the least run of the heat pump takes. */
public record BufferSize(Matter matter, double held_L, double needed_L) implements Case {}
