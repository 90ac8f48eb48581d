package deadband.dayrun;

import java.util.List;

/**
 * The disinfection programme of the heat pump: from time to time it asks a heater for the target
 * and holds it. An interruption of the hold begins it anew; after the time allowed it gives up. A
 * cycle begins within the times of day at which it may run; outside them it asks for nothing, and
 * the hold is interrupted.
 *
 * <p>The immersion heater is asked at full power until the hold is over, its own limits apart; the
 * compressor or the back-up heater until a little above the target, and again at it.
 */
public final class DisinfectionModel {
  /** How far above the target the compressor or the back-up heater goes [K]; our own choice. */
  static final double ABOVE_TARGET_K = 2;

  /** What carries it. */
  public enum Heater {
    NONE,
    IMMERSION,
    HEAT_PUMP,
    BACKUP_HEATER
  }

  private final Heater heater;
  private final double target_C;
  private final int holdSteps;
  private final int allowedSteps;
  private final long betweenSteps;
  private final Thermostat aboveTarget;
  private final Hours open;
  private long untilDue;
  private int elapsed;
  private int held;
  private boolean active;
  private boolean wants;

  DisinfectionModel(Spec spec, StepLength step) {
    heater = spec.heater;
    target_C = spec.target_C;
    holdSteps = step.delay(spec.hold_min);
    allowedSteps = step.delay(spec.timeAllowed_min);
    betweenSteps = Math.max(1, Math.round(spec.every_days * step.perDay()));
    untilDue = step.until(spec.firstDue_min);
    open = spec.open();
    aboveTarget = Thermostat.closed(target_C + ABOVE_TARGET_K, target_C);
  }

  /**
   * How it is set.
   *
   * @param heater what carries it
   * @param target_C temperature it heats to [°C]
   * @param hold_min time it holds the target [min]
   * @param every_days days from one cycle to the next [d]
   * @param firstDue_min time from the start of the run to the first cycle [min]
   * @param sensor_mm height of the sensor it watches above the base [mm]
   * @param timeAllowed_min time after which it gives up [min]
   * @param allowed times of day at which it may run; none for any
   */
  public record Spec(
      Heater heater,
      double target_C,
      double hold_min,
      double every_days,
      double firstDue_min,
      double sensor_mm,
      double timeAllowed_min,
      List<Window> allowed) {
    public Spec {
      allowed = List.copyOf(allowed);
    }

    /** The same programme, due for the first time so long after the start of the run [min]. */
    public Spec firstDue(double later_min) {
      return new Spec(
          heater, target_C, hold_min, every_days, later_min, sensor_mm, timeAllowed_min, allowed);
    }

    /** The times of day at which it may run. */
    Hours open() {
      return Hours.anyOr(allowed);
    }

    /** The longest stretch of them. */
    Window longest() {
      return open().longest();
    }

    /** No disinfection. */
    public static Spec none() {
      return new Spec(Heater.NONE, 60, 0, 1, 0, 0, 0, List.of());
    }
  }

  /** Looks at one step and decides for the next. */
  void decide(double sensor_C, int secondOfDay) {
    if (heater == Heater.NONE) {
      return;
    }
    boolean mayRun = open.hold(secondOfDay);
    if (active) {
      hold(mayRun && sensor_C >= target_C);
    }
    if (untilDue-- <= 0 && mayRun) {
      begin();
    }
    wants = active && mayRun && (heater == Heater.IMMERSION || aboveTarget.follow(sensor_C));
  }

  private void hold(boolean atTarget) {
    elapsed++;
    held = atTarget ? held + 1 : 0;
    active = held < holdSteps && elapsed < allowedSteps;
  }

  private void begin() {
    active = true;
    elapsed = 0;
    held = 0;
    untilDue = betweenSteps - 1;
  }

  /** Whether a cycle is under way. */
  boolean active() {
    return active;
  }

  /** Whether it asks this heater for heat now. */
  boolean calls(Heater asked) {
    return wants && heater == asked;
  }
}
