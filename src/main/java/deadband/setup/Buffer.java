package deadband.setup;

/** The space-heating buffer. */
@Equipment
public record Buffer(
    Part part,
    @Described("water content of the buffer") Entered<Double> volume_L,
    @Described("water content of the system that always flows") Entered<Double> systemVolume_L,
    @Described(value = "temperature differential it may use", least = 0, most = 50)
        Entered<Double> swing_K,
    @Described("minimum heat output of the heat pump") Entered<Double> leastHeatOutput_kW,
    @Described("minimum heat demand of the open zones") Entered<Double> leastHeatDemand_kW) {}
