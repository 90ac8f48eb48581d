package deadband.setup;

import java.util.List;

/** The disinfection programme of the heat pump. */
public record Disinfection(
    Part part,
    @Described("whether it runs") Told<Boolean> enabled,
    @Described(value = "temperature it heats to", least = 20, most = 100) Told<Double> target_C,
    @Described("time it holds the target") Told<Double> hold_min,
    @Described(value = "interval of the cycles", least = 0.01, most = 3650) Told<Double> every_days,
    @Described("heater that brings the store to the target") Told<Heater> heater,
    @Described("height of the sensor it watches, above the base") Told<Double> sensor_mm,
    @Described("time allowed before it stops trying") Told<Double> timeAllowed_min,
    @Described("whether an interruption starts the hold again") Told<Boolean> restartsHold,
    @Described("times of day at which it may run, an empty list for any")
        Told<List<ClockWindow>> allowed,
    @Described("whether a pump mixes the whole store while it runs") Told<Boolean> mixesStore) {

  /** The heater that carries the disinfection. */
  public enum Heater implements Choice {
    IMMERSION,
    HEAT_PUMP,
    BACKUP_HEATER,
    SURPLUS,
    NONE
  }
}
