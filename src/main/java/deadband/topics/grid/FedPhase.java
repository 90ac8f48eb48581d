package deadband.topics.grid;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the PV feeds the phase that a heater is on. */
public record FedPhase(Matter matter, boolean fed) implements Case {}
