package deadband.setup;

import java.util.List;

/** The controller that feeds surplus into the immersion heater in proportion. */
@Equipment
public record Diverter(
    Part part,
    @Described(value = "tank limit", least = 10, most = 100)
        @Asked(
            value = "At what tank temperature does the diverter stop?",
            where = Asked.Where.CONTROLLER_MENU,
            usual = "60 to 65")
        Entered<Double> limit_C,
    @Described(value = "hysteresis of the tank limit", least = 0, most = 30)
        @Asked(
            value = "What is the hysteresis of the diverter's tank limit?",
            where = Asked.Where.CONTROLLER_MENU,
            usual = "1 to 5")
        Entered<Double> hysteresis_K,
    @OfType
        @Described("on which side of the limit the hysteresis lies")
        @Asked(
            value = "Does the hysteresis lie below the limit, or on both sides?",
            where = Asked.Where.PAPERS)
        Entered<HysteresisLies> hysteresisLies,
    @OfType
        @Described(value = "minimum power it feeds", assumed = "0.15", because = "common practice")
        @Asked(
            value = "What is the minimum power the diverter feeds?",
            where = Asked.Where.PAPERS,
            usual = "0.15")
        Entered<Double> minimum_kW,
    @Described(
            value = "maximum power it may feed, as on its data plate",
            assumed = "3.68",
            because = "common practice: 16 A at 230 V")
        @Asked(
            value = "What is the maximum power the diverter may feed?",
            where = Asked.Where.DATA_PLATE,
            usual = "3 to 3.7")
        Entered<Double> maximum_kW,
    @Described(
            value = "export that it leaves at the meter",
            least = -20,
            most = 20,
            assumed = "0",
            because = "common practice")
        @Asked(
            value = "How much export does the diverter leave at the meter?",
            where = Asked.Where.CONTROLLER_MENU,
            usual = "0 to 0.1")
        Entered<Double> exportMargin_kW,
    @Described("phase it is connected to")
        @Asked(value = "To which phase is the diverter connected?", where = Asked.Where.LOOK)
        Entered<Phase> phase,
    @Described("its tank sensor")
        @Asked(value = "Does the diverter have a tank sensor?", where = Asked.Where.LOOK)
        TankSensor sensor,
    @Described("free space above it")
        @Asked(
            value = "How much free space is above the diverter?",
            where = Asked.Where.MEASURE,
            usual = "200 or more")
        Entered<Double> clearanceAbove_mm,
    @Described("free space below it")
        @Asked(
            value = "How much free space is below the diverter?",
            where = Asked.Where.MEASURE,
            usual = "200 or more")
        Entered<Double> clearanceBelow_mm,
    @OfType
        @Described("free space its instructions require")
        @Asked(
            value = "How much free space do the diverter's instructions require?",
            where = Asked.Where.PAPERS,
            usual = "100 to 200")
        Entered<Double> clearanceNeeded_mm,
    @Described("whether a hot surface lies below it")
        @Asked(value = "Is a hot surface below the diverter?", where = Asked.Where.LOOK)
        Entered<Boolean> hotSurfaceBelow,
    @Described(value = "maximum air temperature around it", least = -40, most = 80)
        @Asked(
            value = "How warm does the air around the diverter get?",
            where = Asked.Where.MEASURE,
            usual = "20 to 35")
        Entered<Double> ambient_C,
    @Described(value = "rated maximum air temperature", least = 0, most = 100)
        @Asked(
            value = "For which air temperature is the diverter rated?",
            where = Asked.Where.DATA_PLATE,
            usual = "40")
        Entered<Double> ambientMax_C,
    @Described("its current-sensor inputs")
        @Asked(
            value = "What do the diverter's current-sensor inputs measure?",
            where = Asked.Where.CONTROLLER_MENU,
            usual = "grid")
        Entered<List<CurrentSensor>> currentSensors,
    @Described("the input through which another device requests the immersion heater")
        @Asked(
            value = "Does another device request the immersion heater?",
            where = Asked.Where.LOOK)
        DemandInput demandInput) {

  /** On which side of the limit the hysteresis lies. */
  public enum HysteresisLies implements Choice {
    BELOW,
    BOTH
  }
}
