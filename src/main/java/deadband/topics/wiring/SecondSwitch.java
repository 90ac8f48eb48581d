package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether a second switch can feed the heater around the diverter. */
public record SecondSwitch(Matter matter, boolean present) implements Case {}
