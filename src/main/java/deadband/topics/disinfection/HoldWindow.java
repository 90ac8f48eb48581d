package deadband.topics.disinfection;

import deadband.facts.Case;
import deadband.facts.Matter;

/**
 * A disinfection whose hold starts again when it is interrupted, against the time it has in one go.
 */
public record HoldWindow(Matter matter, double needed_min, double window_min) implements Case {}
