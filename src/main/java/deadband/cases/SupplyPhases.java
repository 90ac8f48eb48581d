package deadband.cases;

/** The phases in use, against those the supply is entered with. */
public record SupplyPhases(Matter matter, double used, double supplied) implements Case {}
