package deadband.topics.thresholds;

import deadband.facts.Case;
import deadband.facts.Evidence;
import deadband.facts.Quantity;

/** The power of an immersion heater that takes surplus before the relay sees it. */
public record HiddenHeater(Evidence evidence, Quantity power_kW) implements Case {}
