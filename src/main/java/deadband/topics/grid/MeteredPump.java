package deadband.topics.grid;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the grid sensor measures what the heat pump draws. */
public record MeteredPump(Matter matter, boolean behindSensor) implements Case {}
