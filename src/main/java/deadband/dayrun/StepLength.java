package deadband.dayrun;

/**
 * The time one step stands for: whole seconds that divide an hour.
 *
 * @param seconds length of a step [s]
 */
public record StepLength(int seconds) {
  /** The usual step. */
  public static final StepLength MINUTE = new StepLength(60);

  static final int SECONDS_PER_HOUR = 3600;
  static final int SECONDS_PER_DAY = 24 * SECONDS_PER_HOUR;
  private static final double SECONDS_PER_MINUTE = 60;

  /** Times closer than this to a whole number of steps count as whole: 0.1 min is 6 s. */
  private static final double WHOLE = 1e-9;

  public StepLength {
    if (seconds <= 0 || SECONDS_PER_HOUR % seconds != 0) {
      throw new IllegalArgumentException(
          "a step of " + seconds + " s does not divide an hour: 60 s, 30 s and 300 s do");
    }
  }

  /** A step of so many minutes. */
  public static StepLength ofMinutes(int minutes) {
    return new StepLength(Math.multiplyExact(minutes, 60));
  }

  /** The length in hours [h]. */
  public double hours() {
    return seconds / (double) SECONDS_PER_HOUR;
  }

  /** The length in minutes [min]. */
  public double minutes() {
    return seconds / SECONDS_PER_MINUTE;
  }

  /** Steps in an hour. */
  public int perHour() {
    return SECONDS_PER_HOUR / seconds;
  }

  /** Steps in a day. */
  public int perDay() {
    return SECONDS_PER_DAY / seconds;
  }

  /** Steps until a time is over, 0 for no time. */
  int until(double time_min) {
    return (int) Math.ceil(time_min / minutes() - WHOLE);
  }

  /** Steps that a delay lasts: at least one, since a state holds from one step to the next. */
  int delay(double time_min) {
    return Math.max(1, until(time_min));
  }
}
