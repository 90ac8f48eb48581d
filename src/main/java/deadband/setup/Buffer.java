package deadband.setup;

/** The space-heating buffer. */
@Equipment
public record Buffer(
    Part part,
    @Described("water content of the buffer") Told<Double> volume_L,
    @Described("water content of the system that always flows") Told<Double> systemVolume_L,
    @Described(value = "temperature differential it may use", least = 0, most = 50)
        Told<Double> swing_K,
    @Described("minimum heat output of the heat pump") Told<Double> leastHeatOutput_kW,
    @Described("minimum heat demand of the open zones") Told<Double> leastHeatDemand_kW) {}
