package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The breaker of a circuit, and what its cable carries. */
public record CableBreaker(Matter matter, double breaker_A, double cable_A) implements Case {}
