package deadband.topics.disinfection;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the diverter acts on the heat pump's demand for the immersion heater. */
public record DemandAnswer(Matter matter, boolean answered) implements Case {}
