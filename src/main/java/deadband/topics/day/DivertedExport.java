package deadband.topics.day;

import deadband.facts.Case;
import deadband.facts.Matter;

/**
 * What an export limit leaves a diverter to regulate on.
 *
 * @param seen_kW most export that it can see above its margin [kW]
 * @param needed_kW least power it feeds [kW]
 */
public record DivertedExport(Matter matter, double seen_kW, double needed_kW) implements Case {}
