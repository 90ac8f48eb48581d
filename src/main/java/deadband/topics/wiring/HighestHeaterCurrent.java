package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** What the heater draws at the highest voltage of the supply, and its breaker. */
public record HighestHeaterCurrent(Matter matter, double current_A, double breaker_A)
    implements Case {}
