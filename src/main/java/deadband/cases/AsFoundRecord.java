package deadband.cases;

/** Whether the settings were photographed as they were found. */
public record AsFoundRecord(Matter matter, boolean photographed) implements Case {}
