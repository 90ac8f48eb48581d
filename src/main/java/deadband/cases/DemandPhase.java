package deadband.cases;

/** Whether a demand signal at mains comes from the phase of the diverter. */
public record DemandPhase(Matter matter, boolean same) implements Case {}
