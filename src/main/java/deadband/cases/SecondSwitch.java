package deadband.cases;

/** Whether a second switch can feed the heater around the diverter. */
public record SecondSwitch(Matter matter, boolean present) implements Case {}
