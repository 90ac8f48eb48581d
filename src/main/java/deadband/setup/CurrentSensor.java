package deadband.setup;

/** One current-sensor input of the diverter. */
@Equipment
public record CurrentSensor(
    Part part,
    @Described(value = "number of the input", least = 1, most = 99, whole = true)
        Entered<Double> input,
    @Described("what it is set to measure") Entered<Assigned> assigned) {

  /** What a current sensor is said to measure. */
  public enum Assigned implements Choice {
    NONE,
    GRID,
    GENERATION,
    HEAT_PUMP,
    BATTERY,
    CHARGER,
    OTHER
  }
}
