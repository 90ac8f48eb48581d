package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the call reaches the heat pump the wrong way round: at rest instead of on surplus. */
public record CallSense(Matter matter, boolean reversed) implements Case {}
