package deadband.setup;

/** The heat pump, as it heats the tank. */
@Equipment
public record HeatPump(
    Part part,
    @Described("heat source") Entered<Source> source,
    @Described(value = "phases it is connected to", least = 1, most = 3, whole = true)
        Entered<Double> phases,
    @Described("phase it is connected to, where it is on one") Entered<Phase> phase,
    @Described("minimum electrical power input") Entered<Double> minimumInput_kW,
    @Described("maximum electrical power input while heating the tank")
        Entered<Double> hotWaterInput_kW,
    @Described("heat output while heating the tank") Entered<Double> hotWaterOutput_kW,
    @Described(value = "maximum flow temperature of the compressor", least = 20, most = 100)
        Entered<Double> maximumFlow_C,
    @Described(
            value = "difference that the flow needs above the tank",
            least = 0,
            most = 40,
            assumed = "5",
            because = "common practice, from memory")
        Entered<Double> flowAboveTank_K,
    @Described(value = "time from call to compressor", assumed = "2", because = "common practice")
        Entered<Double> startLag_min,
    @Described(
            value = "its own minimum run time",
            assumed = "10",
            because = "Wüllhorst et al. 2021")
        Entered<Double> minimumRun_min,
    @Described(value = "its own minimum off time", assumed = "10", because = "common practice")
        Entered<Double> minimumOff_min,
    @Described(value = "starts per hour permitted by its plate", least = 0, most = 60)
        Entered<Double> startsPerHour,
    @Described("height of its tank sensor above the base") Entered<Double> sensor_mm,
    @Described(
            value = "tolerance of its tank sensor either way, where its data sheet states it",
            least = 0,
            most = 20)
        Entered<Double> sensorTolerance_K,
    @Described("the everyday hot water programme") Programme everyday,
    @Described("the hot water programme on a surplus call") Programme surplus,
    @Described("the input that takes the surplus call") SurplusInput surplusInput,
    @Described("its electric back-up heater") BackupHeater backupHeater,
    @Described("its disinfection programme") Disinfection disinfection) {

  /** Where the heat pump takes its heat from. */
  public enum Source implements Choice {
    AIR,
    GROUND,
    WATER
  }
}
