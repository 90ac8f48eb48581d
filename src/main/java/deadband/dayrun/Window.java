package deadband.dayrun;

import java.util.List;

/**
 * A daily span by the clock; it may pass midnight, and from equal to until is the whole day.
 *
 * @param from_min first minute of the day inside [min], 0 to 1439
 * @param until_min first minute of the day outside again [min], 0 to 1440
 */
public record Window(int from_min, int until_min) {
  static final int MINUTES_PER_DAY = 1440;

  /** The whole day. */
  public static final Window ALWAYS = new Window(0, 0);

  public Window {
    if (from_min < 0
        || from_min >= MINUTES_PER_DAY
        || until_min < 0
        || until_min > MINUTES_PER_DAY) {
      throw new IllegalArgumentException(
          "a window from minute " + from_min + " until " + until_min + " is not within a day");
    }
  }

  /**
   * The longest stretch that lies inside any of these windows without a break; windows that meet
   * count as one.
   *
   * @param windows at least one
   */
  public static Window longest(List<Window> windows) {
    return Hours.within(windows).longest();
  }

  /** How long it lasts [min]. */
  public int length_min() {
    int length_min = Math.floorMod(until_min - from_min, MINUTES_PER_DAY);
    return length_min == 0 ? MINUTES_PER_DAY : length_min;
  }

  /** Whether a minute of the day lies inside. */
  public boolean holds(int minuteOfDay) {
    if (from_min < until_min) {
      return minuteOfDay >= from_min && minuteOfDay < until_min;
    }
    return minuteOfDay >= from_min || minuteOfDay < until_min;
  }
}
