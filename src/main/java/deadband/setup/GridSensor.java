package deadband.setup;

/** The current sensor at the supply, from which surplus is reckoned. */
@Equipment
public record GridSensor(
    Part part,
    @Described("where the sensor sits") Entered<Place> at,
    @Described(value = "phases it measures", least = 1, most = 3, whole = true)
        Entered<Double> phases,
    @Described("phase it measures where it measures one") Entered<Phase> phase,
    @Described(value = "rated primary current", least = 1, most = 4000) Entered<Double> rated_A,
    @Described(value = "accuracy class, IEC 61869-2", least = 0.1, most = 10)
        Entered<Double> accuracyClass,
    @Described("whether its direction was checked") Entered<Facing> facing,
    @Described("whether the heat pump is downstream of it") Entered<Boolean> heatPumpBehind) {

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
