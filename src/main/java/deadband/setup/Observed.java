package deadband.setup;

/** What was seen on site. */
public record Observed(
    Part part,
    @Described(value = "starts of the heat pump in an hour", least = 0, most = 600)
        Entered<Double> startsPerHour,
    @Described("length of a typical run") Entered<Double> typicalRun_min,
    @Described("length of a typical pause") Entered<Double> typicalPause_min,
    @Described("weather during the observation") Entered<Weather> weather,
    @Described(
            value = "largest clock error of the controllers, ahead positive",
            least = -1440,
            most = 1440)
        Entered<Double> clockError_min,
    @Described(value = "hottest water at a tap that is not blended", least = 0, most = 100)
        Entered<Double> tap_C) {

  /** The weather in which it was observed. */
  public enum Weather implements Choice {
    SUNNY,
    BROKEN_CLOUD,
    DULL,
    NIGHT,
    ALWAYS
  }
}
