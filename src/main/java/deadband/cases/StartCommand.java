package deadband.cases;

/** Whether a start command brings the back-up heater along. */
public record StartCommand(Matter matter, boolean withBackup) implements Case {}
