package deadband.topics.day;

import deadband.facts.Case;
import deadband.facts.Matter;

/** What the diverter feeds the element on a clear day, by where it comes from. */
public record DivertedEnergy(Matter matter, double bought_kWh, double fromPv_kWh) implements Case {}
