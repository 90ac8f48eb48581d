package deadband.setup;

/** The current sensor at the supply, from which surplus is calculated. */
@Equipment
public record GridSensor(
    Part part,
    @Described("where the sensor sits")
        @Asked(
            value = "Where does the grid sensor sit?",
            where = Asked.Where.LOOK,
            usual = "supply")
        Entered<Place> at,
    @Described(value = "phases it measures", least = 1, most = 3, whole = true)
        @Asked(value = "How many phases does the grid sensor measure?", where = Asked.Where.LOOK)
        Entered<Double> phases,
    @Described("phase it measures where it measures one")
        @Asked(value = "Which phase does the grid sensor measure?", where = Asked.Where.LOOK)
        Entered<Phase> phase,
    @Described(value = "rated primary current", least = 1, most = 4000)
        @Asked(
            value = "What is the rated primary current of the grid sensor?",
            where = Asked.Where.DATA_PLATE,
            usual = "60 to 100")
        Entered<Double> rated_A,
    @Described(value = "accuracy class, IEC 61869-2", least = 0.1, most = 10)
        @Asked(
            value = "What is the accuracy class of the grid sensor?",
            where = Asked.Where.DATA_PLATE,
            usual = "0.5 or 1")
        Entered<Double> accuracyClass,
    @Described("whether its direction was checked")
        @Asked(
            value = "Was the direction of the grid sensor checked?",
            where = Asked.Where.CONTROLLER_MENU)
        Entered<Facing> facing,
    @Described("whether the heat pump is downstream of it")
        @Asked(value = "Is the heat pump downstream of the grid sensor?", where = Asked.Where.LOOK)
        Entered<Boolean> heatPumpBehind) {

  /** Where the sensor sits. */
  public enum Place implements Choice {
    SUPPLY("supply"),
    SUB_BOARD("sub-board"),
    NONE("none");

    private final String word;

    Place(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  /** Whether the direction of the sensor was checked. */
  public enum Facing implements Choice {
    CHECKED,
    UNCHECKED
  }
}
