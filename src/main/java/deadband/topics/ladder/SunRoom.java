package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The heat the tank can still take above the everyday stop, against what a sunny day needs. */
public record SunRoom(Matter matter, double room_kWh, double needed_kWh) implements Case {}
