package deadband.topics.day;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Sun exported on a clear day that the tank had room for. */
public record SunLost(Matter matter, double lost_kWh, double tolerated_kWh) implements Case {}
