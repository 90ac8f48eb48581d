package deadband.cases;

/** What one cloud to zero surplus can cost while the stop delay runs. */
public record CloudCost(Matter matter, Quantity bought_kWh, double tolerated_kWh) implements Case {}
