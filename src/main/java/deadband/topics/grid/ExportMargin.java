package deadband.topics.grid;

import deadband.facts.Case;
import deadband.facts.Matter;

/** What a diverter with a margin below zero keeps buying, against the sensor's own error. */
public record ExportMargin(Matter matter, double bought_kW, double error_kW) implements Case {}
