package deadband.setup;

import java.util.List;

/** The disinfection programme of the heat pump. */
public record Disinfection(
    Part part,
    @Described("whether it runs")
        @Asked(
            value = "Is the disinfection programme switched on?",
            where = Asked.Where.HEAT_PUMP_MENU,
            usual = "yes")
        Entered<Boolean> enabled,
    @Described(value = "temperature it heats to", least = 20, most = 100)
        @Asked(
            value = "To what temperature does the disinfection heat?",
            where = Asked.Where.HEAT_PUMP_MENU,
            usual = "60 to 65")
        Entered<Double> target_C,
    @Described("time it holds the target")
        @Asked(
            value = "How long does the disinfection hold its target?",
            where = Asked.Where.HEAT_PUMP_MENU,
            usual = "30 to 60")
        Entered<Double> hold_min,
    @Described(value = "interval of the cycles", least = 0.01, most = 3650)
        @Asked(
            value = "Every how many days does the disinfection run?",
            where = Asked.Where.HEAT_PUMP_MENU,
            usual = "7")
        Entered<Double> every_days,
    @Described("heater that brings the store to the target")
        @Asked(
            value = "Which heater brings the store to the target?",
            where = Asked.Where.HEAT_PUMP_MENU)
        Entered<Heater> heater,
    @Described("height of the sensor it watches, above the base")
        @Asked(
            value = "How high above the base is the sensor of the disinfection?",
            where = Asked.Where.MEASURE)
        Entered<Double> sensor_mm,
    @Described("time allowed before it stops trying")
        @Asked(
            value = "How long may the disinfection try before it stops?",
            where = Asked.Where.HEAT_PUMP_MENU,
            usual = "180 to 300")
        Entered<Double> timeAllowed_min,
    @OfType
        @Described("whether an interruption starts the hold again")
        @Asked(value = "Does an interruption start the hold again?", where = Asked.Where.PAPERS)
        Entered<Boolean> restartsHold,
    @Described("times of day at which it may run, an empty list for any")
        @Asked(
            value = "At what times may the disinfection run?",
            where = Asked.Where.HEAT_PUMP_MENU,
            usual = "any")
        Entered<List<ClockWindow>> allowed,
    @Described("whether a pump mixes the whole store while it runs")
        @Asked(
            value = "Does a pump mix the whole store during disinfection?",
            where = Asked.Where.LOOK)
        Entered<Boolean> mixesStore) {

  /** The heater that carries the disinfection. */
  public enum Heater implements Choice {
    IMMERSION,
    HEAT_PUMP,
    BACKUP_HEATER,
    SURPLUS,
    NONE
  }
}
