package deadband.topics.house;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The heat that the heat pump gives the tank against the power it takes for it. */
public record OutputOverInput(Matter matter, double output_kW, double input_kW) implements Case {}
