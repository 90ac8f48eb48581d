package deadband.setup;

/** The electric back-up heater of the heat pump. */
@Equipment
public record BackupHeater(
    Part part,
    @Described("rated power") Entered<Double> power_kW,
    @Described("whether it may join on a surplus call") Entered<Boolean> allowedOnSurplus) {}
