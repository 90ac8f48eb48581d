package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The immersion heater's own thermostat, and the diverter's opening. */
public record ThermostatOpening(Matter matter, double thermostat_C, double opening_C)
    implements Case {}
