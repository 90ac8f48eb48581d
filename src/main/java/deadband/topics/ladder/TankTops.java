package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** How far the tops of diverter and heat pump lie apart, and what that may be. */
public record TankTops(Matter matter, double apart_K, double tolerated_K) implements Case {}
