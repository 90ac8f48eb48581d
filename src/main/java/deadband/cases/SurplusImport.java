package deadband.cases;

/** What is bought on a clear day while the compressor runs for the relay. */
public record SurplusImport(Matter matter, double import_kWh, double tolerated_kWh)
    implements Case {}
