package deadband.setup;

/** One outlet that the tank feeds. */
public record Outlet(
    Part part,
    @Described("kind of outlet") Entered<Kind> at,
    @Described("whether a thermostatic mixing valve protects it") Entered<Boolean> blended,
    @Described(value = "temperature its mixing valve is set to", least = 20, most = 100)
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
