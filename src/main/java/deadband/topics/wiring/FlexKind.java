package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the flexible cord to the heater stands its heat. */
public record FlexKind(Matter matter, boolean heatResistant) implements Case {}
