package deadband.setup;

import java.util.List;

/** The disinfection programme of the heat pump. */
public record Disinfection(
    Part part,
    @Described("whether it runs") Entered<Boolean> enabled,
    @Described(value = "temperature it heats to", least = 20, most = 100) Entered<Double> target_C,
    @Described("time it holds the target") Entered<Double> hold_min,
    @Described(value = "interval of the cycles", least = 0.01, most = 3650)
        Entered<Double> every_days,
    @Described("heater that brings the store to the target") Entered<Heater> heater,
    @Described("height of the sensor it watches, above the base") Entered<Double> sensor_mm,
    @Described("time allowed before it stops trying") Entered<Double> timeAllowed_min,
    @Described("whether an interruption starts the hold again") Entered<Boolean> restartsHold,
    @Described("times of day at which it may run, an empty list for any")
        Entered<List<ClockWindow>> allowed,
    @Described("whether a pump mixes the whole store while it runs") Entered<Boolean> mixesStore) {

  /** The heater that carries the disinfection. */
  public enum Heater implements Choice {
    IMMERSION,
    HEAT_PUMP,
    BACKUP_HEATER,
    SURPLUS,
    NONE
  }
}
