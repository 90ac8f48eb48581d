package deadband.cases;

/** The surplus that a battery takes before the relay sees it. */
public record BatteryShade(Matter matter, double hidden_kW) implements Case {}
