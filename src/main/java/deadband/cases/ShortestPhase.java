package deadband.cases;

/** The shortest time for which a call, or the pause after it, is held. */
public record ShortestPhase(Matter matter, double held_min) implements Case {}
