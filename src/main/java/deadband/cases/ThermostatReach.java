package deadband.cases;

/** The immersion heater's own thermostat, and the disinfection it must let through. */
public record ThermostatReach(Matter matter, double thermostat_C, double target_C)
    implements Case {}
