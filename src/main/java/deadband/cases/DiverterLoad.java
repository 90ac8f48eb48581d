package deadband.cases;

/** The power of the immersion heater, against the most its diverter may feed. */
public record DiverterLoad(Matter matter, double element_kW, double most_kW) implements Case {}
