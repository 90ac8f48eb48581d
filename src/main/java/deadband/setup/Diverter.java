package deadband.setup;

import java.util.List;

/** The controller that feeds surplus into the immersion heater in proportion. */
@Equipment
public record Diverter(
    Part part,
    @Described(value = "tank limit", least = 10, most = 100) Entered<Double> limit_C,
    @Described(value = "hysteresis of the tank limit", least = 0, most = 30)
        Entered<Double> hysteresis_K,
    @Described("on which side of the limit the hysteresis lies")
        Entered<HysteresisLies> hysteresisLies,
    @Described(value = "minimum power it feeds", assumed = "0.15", because = "common practice")
        Entered<Double> minimum_kW,
    @Described(
            value = "maximum power it may feed, as on its data plate",
            assumed = "3.68",
            because = "common practice: 16 A at 230 V")
        Entered<Double> maximum_kW,
    @Described(
            value = "export that it leaves at the meter",
            least = -20,
            most = 20,
            assumed = "0",
            because = "common practice")
        Entered<Double> exportMargin_kW,
    @Described("phase it is connected to") Entered<Phase> phase,
    @Described("its tank sensor") TankSensor sensor,
    @Described("free space above it") Entered<Double> clearanceAbove_mm,
    @Described("free space below it") Entered<Double> clearanceBelow_mm,
    @Described("free space its instructions require") Entered<Double> clearanceNeeded_mm,
    @Described("whether a hot surface lies below it") Entered<Boolean> hotSurfaceBelow,
    @Described(value = "maximum air temperature around it", least = -40, most = 80)
        Entered<Double> ambient_C,
    @Described(value = "rated maximum air temperature", least = 0, most = 100)
        Entered<Double> ambientMax_C,
    @Described("its current-sensor inputs") Entered<List<CurrentSensor>> currentSensors,
    @Described("the input through which another device requests the immersion heater")
        DemandInput demandInput) {

  /** On which side of the limit the hysteresis lies. */
  public enum HysteresisLies implements Choice {
    BELOW,
    BOTH
  }
}
