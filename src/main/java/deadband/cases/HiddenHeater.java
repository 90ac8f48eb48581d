package deadband.cases;

/** The power of an immersion heater that takes surplus before the relay sees it. */
public record HiddenHeater(Matter matter, Quantity power_kW) implements Case {}
