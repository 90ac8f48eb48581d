package deadband.cases;

/** What the relay adds up, and whether the export that makes a surplus is among it. */
public record CountedPowers(Matter matter) implements Case {}
