package deadband.setup;

import java.util.List;

/** The controller that feeds surplus into the immersion heater in proportion. */
@Equipment
public record Diverter(
    Part part,
    @Described("tank limit") Told<Double> limit_C,
    @Described("hysteresis of the tank limit") Told<Double> hysteresis_K,
    @Described("on which side of the limit the hysteresis lies")
        Told<HysteresisLies> hysteresisLies,
    @Described(value = "least power it feeds", assumed = "0.15", because = "common practice")
        Told<Double> minimum_kW,
    @Described(
            value = "export it leaves untouched",
            least = -100,
            most = 100,
            assumed = "0",
            because = "common practice")
        Told<Double> exportMargin_kW,
    @Described("phase it is connected to") Told<Phase> phase,
    @Described("its tank sensor") TankSensor sensor,
    @Described("free space above it") Told<Double> clearanceAbove_mm,
    @Described("free space below it") Told<Double> clearanceBelow_mm,
    @Described("free space its instructions ask for") Told<Double> clearanceNeeded_mm,
    @Described("whether a hot surface lies below it") Told<Boolean> hotSurfaceBelow,
    @Described("warmest air around it") Told<Double> ambient_C,
    @Described("warmest air it is rated for") Told<Double> ambientMax_C,
    @Described("its current-sensor inputs") Told<List<CurrentSensor>> currentSensors,
    @Described("the input that another device calls for the immersion heater through")
        DemandInput demandInput) {

  /** On which side of the limit the hysteresis lies. */
  public enum HysteresisLies implements Choice {
    BELOW,
    BOTH
  }
}
