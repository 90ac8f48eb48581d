package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The immersion heater's own thermostat, and the disinfection it must let through. */
public record ThermostatReach(Matter matter, double thermostat_C, double target_C)
    implements Case {}
