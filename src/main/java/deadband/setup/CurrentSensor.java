package deadband.setup;

/** One current-sensor input of the diverter. */
@Equipment
public record CurrentSensor(
    Part part,
    @Described(value = "number of the input", least = 1, most = 99, whole = true)
        @Asked(value = "Which number does the current-sensor input have?", where = Asked.Where.LOOK)
        Entered<Double> input,
    @Described("what it is set to measure")
        @Asked(
            value = "What is the current-sensor input set to measure?",
            where = Asked.Where.CONTROLLER_MENU,
            usual = "grid")
        Entered<Assigned> assigned) {

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
