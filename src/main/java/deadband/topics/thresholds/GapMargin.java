package deadband.topics.thresholds;

import deadband.facts.Case;
import deadband.facts.Evidence;
import deadband.facts.Quantity;

/** What the relay's gap leaves beyond the heat pump's draw, against twice the meter's error. */
public record GapMargin(
    Evidence evidence, Quantity draw_kW, Quantity spare_kW, Quantity meterError_kW)
    implements Case {}
