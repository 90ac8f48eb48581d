package deadband.cases;

/**
 * Whether on a clear day the element has the tank so warm before the relay calls that the call does
 * nothing.
 */
public record HeaterFirst(Matter matter, boolean callIsIdle) implements Case {}
