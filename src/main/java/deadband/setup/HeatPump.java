package deadband.setup;

/** The heat pump, as it heats the tank. */
@Equipment
public record HeatPump(
    Part part,
    @OfType
        @Described("heat source")
        @Asked(value = "From where does the heat pump take its heat?", where = Asked.Where.LOOK)
        Entered<Source> source,
    @Described(value = "phases it is connected to", least = 1, most = 3, whole = true)
        @Asked(
            value = "To how many phases is the heat pump connected?",
            where = Asked.Where.DATA_PLATE,
            usual = "1, or 3")
        Entered<Double> phases,
    @Described("phase it is connected to, where it is on one")
        @Asked(value = "To which phase is the heat pump connected?", where = Asked.Where.LOOK)
        Entered<Phase> phase,
    @Described("minimum electrical power input")
        @Asked(
            value = "What is the minimum electrical power input of the heat pump?",
            where = Asked.Where.DATA_PLATE,
            usual = "0.5 to 2")
        Entered<Double> minimumInput_kW,
    @Described("maximum electrical power input while heating the tank")
        @Asked(
            value = "What is the heat pump's maximum power input while it heats the tank?",
            where = Asked.Where.DATA_PLATE,
            usual = "1.5 to 4")
        Entered<Double> hotWaterInput_kW,
    @Described("heat output while heating the tank")
        @Asked(
            value = "What is the heat pump's heat output while it heats the tank?",
            where = Asked.Where.DATA_PLATE,
            usual = "5 to 12")
        Entered<Double> hotWaterOutput_kW,
    @Described(value = "maximum flow temperature of the compressor", least = 20, most = 100)
        @Asked(
            value = "What is the maximum flow temperature of the compressor?",
            where = Asked.Where.DATA_PLATE,
            usual = "55 to 75")
        Entered<Double> maximumFlow_C,
    @OfType
        @Described(
            value = "difference that the flow needs above the tank",
            least = 0,
            most = 40,
            assumed = "5",
            because = "common practice, from memory")
        @Asked(
            value = "How far must the heat pump's flow be above the tank?",
            where = Asked.Where.PAPERS,
            usual = "5")
        Entered<Double> flowAboveTank_K,
    @Described(value = "time from call to compressor", assumed = "2", because = "common practice")
        @Asked(
            value = "How long does the heat pump take from call to compressor?",
            where = Asked.Where.MEASURE,
            usual = "2")
        Entered<Double> startLag_min,
    @Described(
            value = "its own minimum run time",
            assumed = "10",
            because = "Wüllhorst et al. 2021")
        @Asked(
            value = "What is the heat pump's own minimum run time?",
            where = Asked.Where.HEAT_PUMP_MENU,
            usual = "10")
        Entered<Double> minimumRun_min,
    @Described(value = "its own minimum off time", assumed = "10", because = "common practice")
        @Asked(
            value = "What is the heat pump's own minimum off time?",
            where = Asked.Where.HEAT_PUMP_MENU,
            usual = "10 to 20")
        Entered<Double> minimumOff_min,
    @Described(value = "starts per hour permitted by its plate", least = 0, most = 60)
        @Asked(
            value = "How many starts per hour does the heat pump's plate permit?",
            where = Asked.Where.DATA_PLATE,
            usual = "3")
        Entered<Double> startsPerHour,
    @Described("height of its tank sensor above the base")
        @Asked(
            value = "How high above the base is the heat pump's tank sensor?",
            where = Asked.Where.MEASURE)
        Entered<Double> sensor_mm,
    @OfType
        @Described(
            value = "tolerance of its tank sensor either way, where its data sheet states it",
            least = 0,
            most = 20)
        @Asked(
            value = "What tolerance does the data sheet of the heat pump's tank sensor state?",
            where = Asked.Where.PAPERS)
        Entered<Double> sensorTolerance_K,
    @Described("the everyday hot water programme")
        @Asked(
            value = "How is the everyday hot water programme set?",
            where = Asked.Where.HEAT_PUMP_MENU)
        Programme everyday,
    @Described("the hot water programme on a surplus call")
        @Asked(
            value = "How is the hot water programme on a surplus call set?",
            where = Asked.Where.HEAT_PUMP_MENU)
        Programme surplus,
    @Described("the input that takes the surplus call")
        @Asked(
            value = "Has the heat pump an input for the surplus call?",
            where = Asked.Where.PAPERS)
        SurplusInput surplusInput,
    @Described("its electric back-up heater")
        @Asked(
            value = "Does the heat pump have an electric back-up heater?",
            where = Asked.Where.DATA_PLATE)
        BackupHeater backupHeater,
    @Described("its disinfection programme")
        @Asked(
            value = "How is the disinfection programme of the heat pump set?",
            where = Asked.Where.HEAT_PUMP_MENU)
        Disinfection disinfection) {

  /** Where the heat pump takes its heat from. */
  public enum Source implements Choice {
    AIR,
    GROUND,
    WATER
  }
}
