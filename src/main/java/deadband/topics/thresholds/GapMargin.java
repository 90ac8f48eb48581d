package deadband.topics.thresholds;

import deadband.facts.Case;
import deadband.facts.Matter;
import deadband.facts.Quantity;

/** What the relay's gap leaves beyond the heat pump's draw, against twice the meter's error. */
public record GapMargin(Matter matter, Quantity draw_kW, Quantity spare_kW, Quantity meterError_kW)
    implements Case {}
