package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The immersion heater's own thermostat, as the barrier behind the controls. */
public record ThermostatBarrier(Matter matter, double thermostat_C, double hotSupplyMax_C)
    implements Case {}
