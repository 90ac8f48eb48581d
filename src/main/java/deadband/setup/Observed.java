package deadband.setup;

/** What was seen on site. */
public record Observed(
    Part part,
    @Described(value = "starts of the heat pump in an hour", least = 0, most = 600)
        @Asked(
            value = "How many starts of the heat pump were seen in an hour?",
            where = Asked.Where.LOOK)
        Entered<Double> startsPerHour,
    @Described("length of a typical run")
        @Asked(value = "How long was a typical run?", where = Asked.Where.MEASURE)
        Entered<Double> typicalRun_min,
    @Described("length of a typical pause")
        @Asked(value = "How long was a typical pause?", where = Asked.Where.MEASURE)
        Entered<Double> typicalPause_min,
    @Described("weather during the observation")
        @Asked(value = "What was the weather during the observation?", where = Asked.Where.LOOK)
        Entered<Weather> weather,
    @Described(
            value = "largest clock error of the controllers, ahead positive",
            least = -1440,
            most = 1440)
        @Asked(
            value = "How wrong is the worst controller clock?",
            where = Asked.Where.CONTROLLER_MENU,
            usual = "0")
        Entered<Double> clockError_min,
    @Described(value = "hottest water at a tap that is not blended", least = 0, most = 100)
        @Asked(
            value = "How hot is the water at a tap that is not blended?",
            where = Asked.Where.MEASURE)
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
