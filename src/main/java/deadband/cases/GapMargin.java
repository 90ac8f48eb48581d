package deadband.cases;

/** What the relay's gap leaves beyond the heat pump's draw, against twice the meter's error. */
public record GapMargin(Matter matter, double spare_kW, double meterError_kW) implements Case {}
