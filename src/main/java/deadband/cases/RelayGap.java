package deadband.cases;

/** The gap between the relay's thresholds, and what the heat pump takes away once it starts. */
public record RelayGap(Matter matter, double width_kW, double draw_kW) implements Case {}
