package deadband.topics.grid;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the back-up heater may join on a surplus call. */
public record BackupOnSurplus(Matter matter, boolean joins) implements Case {}
