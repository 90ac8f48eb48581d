package deadband.cases;

/** Whether the diverter acts on the heat pump's demand for the immersion heater. */
public record DemandAnswer(Matter matter, boolean answered) implements Case {}
