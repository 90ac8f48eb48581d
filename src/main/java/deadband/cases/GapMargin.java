package deadband.cases;

/** What the relay's gap leaves beyond the heat pump's draw, against twice the meter's error. */
public record GapMargin(Matter matter, Quantity draw_kW, Quantity spare_kW, Quantity meterError_kW)
    implements Case {}
