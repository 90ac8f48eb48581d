package deadband.cases;

/** Whether everything was isolated and proved dead. */
public record IsolationRecord(Matter matter, boolean confirmed) implements Case {}
