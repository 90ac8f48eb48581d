package deadband.cases;

/** The gap between the relay's thresholds, and the power of the element that it switches. */
public record ElementGap(Matter matter, double width_kW, double draw_kW) implements Case {}
