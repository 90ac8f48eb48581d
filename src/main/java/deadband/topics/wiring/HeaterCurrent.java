package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** What the heater draws at the voltage of the site, and its breaker. */
public record HeaterCurrent(Matter matter, double current_A, double breaker_A) implements Case {}
