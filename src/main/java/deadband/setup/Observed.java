package deadband.setup;

/** What was seen on site. */
public record Observed(
    Part part,
    @Described(value = "starts of the heat pump in an hour", least = 0, most = 600)
        Told<Double> startsPerHour,
    @Described("length of a typical run") Told<Double> typicalRun_min,
    @Described("length of a typical pause") Told<Double> typicalPause_min,
    @Described("weather during the observation") Told<Weather> weather,
    @Described(
            value = "largest clock error of the controllers, ahead positive",
            least = -1440,
            most = 1440)
        Told<Double> clockError_min,
    @Described(value = "hottest water at a tap that is not blended", least = 0, most = 100)
        Told<Double> tap_C) {

  /** The weather in which it was observed. */
  public enum Weather implements Choice {
    SUNNY,
    BROKEN_CLOUD,
    DULL,
    NIGHT,
    ALWAYS
  }
}
