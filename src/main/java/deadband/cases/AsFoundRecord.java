package deadband.cases;

/** Whether every setting was photographed before anything was changed. */
public record AsFoundRecord(Matter matter, boolean photographed) implements Case {}
