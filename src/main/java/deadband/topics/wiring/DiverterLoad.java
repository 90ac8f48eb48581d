package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The power of the immersion heater, against the most its diverter may feed. */
public record DiverterLoad(Matter matter, double element_kW, double most_kW) implements Case {}
