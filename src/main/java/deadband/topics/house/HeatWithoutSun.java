package deadband.topics.house;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether anything heats the tank on a day without surplus. */
public record HeatWithoutSun(Matter matter, boolean heated) implements Case {}
