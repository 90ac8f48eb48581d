package deadband.cases;

/** Sun exported on a clear day that the tank had room for. */
public record SunLost(Matter matter, double lost_kWh, double tolerated_kWh) implements Case {}
