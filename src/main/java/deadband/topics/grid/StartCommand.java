package deadband.topics.grid;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether a start command brings the back-up heater along. */
public record StartCommand(Matter matter, boolean withBackup) implements Case {}
