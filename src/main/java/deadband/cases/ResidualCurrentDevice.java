package deadband.cases;

/** Whether a residual-current device is blind to the currents of electronics. */
public record ResidualCurrentDevice(Matter matter, boolean blind) implements Case {}
