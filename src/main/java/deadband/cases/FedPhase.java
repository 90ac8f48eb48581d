package deadband.cases;

/** Whether the PV feeds the phase that a heater is on. */
public record FedPhase(Matter matter, boolean fed) implements Case {}
