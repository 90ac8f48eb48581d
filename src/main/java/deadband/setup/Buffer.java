package deadband.setup;

/** The space-heating buffer. */
@Equipment
public record Buffer(
    Part part,
    @Described("water content of the buffer")
        @Asked(
            value = "How much water does the buffer hold?",
            where = Asked.Where.DATA_PLATE,
            usual = "50 to 200")
        Entered<Double> volume_L,
    @Described("water content of the system that always flows")
        @Asked(
            value = "How much water of the heating system always flows?",
            where = Asked.Where.PAPERS)
        Entered<Double> systemVolume_L,
    @Described(value = "temperature differential it may use", least = 0, most = 50)
        @Asked(
            value = "What temperature differential may the buffer use?",
            where = Asked.Where.HEAT_PUMP_MENU,
            usual = "5")
        Entered<Double> swing_K,
    @Described("minimum heat output of the heat pump")
        @Asked(
            value = "What is the minimum heat output of the heat pump?",
            where = Asked.Where.DATA_PLATE,
            usual = "2 to 5")
        Entered<Double> leastHeatOutput_kW,
    @Described("minimum heat demand of the open zones")
        @Asked(
            value = "What is the minimum heat demand of the open zones?",
            where = Asked.Where.PAPERS)
        Entered<Double> leastHeatDemand_kW) {}
