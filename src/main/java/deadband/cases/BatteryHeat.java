package deadband.cases;

/** Whether the battery may discharge into the immersion heater. */
public record BatteryHeat(Matter matter, boolean discharges) implements Case {}
