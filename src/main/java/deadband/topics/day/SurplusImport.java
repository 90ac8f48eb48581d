package deadband.topics.day;

import deadband.facts.Case;
import deadband.facts.Matter;

/** What is bought on a clear day while the compressor runs for the relay. */
public record SurplusImport(Matter matter, double import_kWh, double tolerated_kWh)
    implements Case {}
