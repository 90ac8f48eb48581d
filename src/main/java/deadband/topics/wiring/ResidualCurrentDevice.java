package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether a residual-current device is blind to the currents of electronics. */
public record ResidualCurrentDevice(Matter matter, boolean blind) implements Case {}
