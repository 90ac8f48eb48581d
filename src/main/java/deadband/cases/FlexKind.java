package deadband.cases;

/** Whether the flexible cord to the heater stands its heat. */
public record FlexKind(Matter matter, boolean heatResistant) implements Case {}
