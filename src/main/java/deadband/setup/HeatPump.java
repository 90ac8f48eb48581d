package deadband.setup;

/** The heat pump, as it heats the tank. */
@Equipment
public record HeatPump(
    Part part,
    @Described("where it takes its heat from") Told<Source> source,
    @Described(value = "phases it draws from", least = 1, most = 3, whole = true)
        Told<Double> phases,
    @Described("phase it draws from where it draws from one") Told<Phase> phase,
    @Described("least electrical input") Told<Double> minimumInput_kW,
    @Described("most electrical input while heating the tank") Told<Double> hotWaterInput_kW,
    @Described("heat it gives the tank") Told<Double> hotWaterOutput_kW,
    @Described(value = "highest flow temperature the compressor reaches", least = 20, most = 100)
        Told<Double> maximumFlow_C,
    @Described(
            value = "how far the flow must lie above the tank",
            least = 0,
            most = 40,
            assumed = "5",
            because = "common practice, from memory")
        Told<Double> flowAboveTank_K,
    @Described(value = "time from call to compressor", assumed = "2", because = "common practice")
        Told<Double> startLag_min,
    @Described(
            value = "its own minimum run time",
            assumed = "10",
            because = "Wüllhorst et al. 2021")
        Told<Double> minimumRun_min,
    @Described(value = "its own minimum off time", assumed = "10", because = "common practice")
        Told<Double> minimumOff_min,
    @Described(value = "starts an hour its plate allows", least = 0, most = 60)
        Told<Double> startsPerHour,
    @Described("height of its tank sensor above the base") Told<Double> sensor_mm,
    @Described(
            value = "tolerance of its tank sensor either way, where its data sheet states it",
            least = 0,
            most = 20)
        Told<Double> sensorTolerance_K,
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
