package deadband.topics.records;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the settings were photographed as they were found. */
public record AsFoundRecord(Matter matter, boolean photographed) implements Case {}
