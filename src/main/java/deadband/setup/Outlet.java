package deadband.setup;

/** One outlet that the tank feeds. */
public record Outlet(
    Part part,
    @Described("kind of outlet")
        @Asked(value = "What kind of outlet is it?", where = Asked.Where.LOOK)
        Entered<Kind> at,
    @Described("whether a thermostatic mixing valve protects it")
        @Asked(
            value = "Does a thermostatic mixing valve protect the outlet?",
            where = Asked.Where.LOOK)
        Entered<Boolean> blended,
    @Described(value = "temperature its mixing valve is set to", least = 20, most = 100)
        @Asked(
            value = "To what temperature is the mixing valve of the outlet set?",
            where = Asked.Where.MEASURE,
            usual = "41 to 44")
        Entered<Double> mixed_C) {

  /** The kind of outlet. */
  public enum Kind implements Choice {
    BATH,
    SHOWER,
    BASIN,
    BIDET,
    KITCHEN,
    OTHER
  }
}
