package deadband.cases;

/** Whether a mains demand signal that enters the diverter was isolated and proved dead. */
public record DemandSignalIsolation(Matter matter, boolean provedDead) implements Case {}
