package deadband.cases;

/** The heat that the heat pump gives the tank against the power it takes for it. */
public record OutputOverInput(Matter matter, double output_kW, double input_kW) implements Case {}
