package deadband.setup;

/** The space-heating buffer. */
@Equipment
public record Buffer(
    Part part,
    @Described("water content of the buffer") Told<Double> volume_L,
    @Described("water content of the system that always flows") Told<Double> systemVolume_L,
    @Described(value = "temperature swing it may use", least = 0, most = 50) Told<Double> swing_K,
    @Described("least heat the heat pump gives") Told<Double> leastHeatOutput_kW,
    @Described("least heat the open zones take") Told<Double> leastHeatDemand_kW) {}
