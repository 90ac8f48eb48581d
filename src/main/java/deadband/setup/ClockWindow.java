package deadband.setup;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A daily window by the clock, such as {@code 22:00-06:00}; it may pass midnight.
 *
 * @param from_min first minute of the day that lies inside [min]
 * @param until_min first minute of the day that lies outside again [min]
 */
public record ClockWindow(int from_min, int until_min) {

  private static final int MINUTES_PER_DAY = 1440;

  /** The form in which a window is written. */
  public static final String PATTERN = "([01]\\d|2[0-3]):([0-5]\\d)-([01]\\d|2[0-3]):([0-5]\\d)";

  /** Reads {@code HH:MM-HH:MM}; empty where the text is not of that form. */
  public static Optional<ClockWindow> parse(String text) {
    Matcher matcher = Pattern.compile(PATTERN).matcher(text);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    return Optional.of(new ClockWindow(minute(matcher, 1), minute(matcher, 3)));
  }

  private static int minute(Matcher matcher, int group) {
    return 60 * Integer.parseInt(matcher.group(group)) + Integer.parseInt(matcher.group(group + 1));
  }

  /** Whether a minute of the day lies inside; from equal to until is the whole day. */
  public boolean holds(int minuteOfDay) {
    boolean begun = minuteOfDay >= from_min;
    boolean over = minuteOfDay >= until_min;
    return from_min < until_min ? begun && !over : begun || !over;
  }

  /** How long it lasts [min]; from equal to until is the whole day. */
  public int length_min() {
    int length_min = until_min - from_min;
    return length_min > 0 ? length_min : length_min + MINUTES_PER_DAY;
  }

  /** How much of it lies inside any of the others [min]. */
  public int sharedWith_min(List<ClockWindow> others) {
    if (others.isEmpty()) {
      return 0;
    }
    BitSet inside = minutes();
    BitSet anywhere = new BitSet(MINUTES_PER_DAY);
    others.forEach(other -> anywhere.or(other.minutes()));
    inside.and(anywhere);
    return inside.cardinality();
  }

  /**
   * Minutes of a day inside any of some windows, the whole day where there are none, and outside
   * all of some others [min].
   */
  public static int free_min(List<ClockWindow> within, List<ClockWindow> outside) {
    BitSet free = new BitSet(MINUTES_PER_DAY);
    free.set(0, within.isEmpty() ? MINUTES_PER_DAY : 0);
    within.forEach(window -> free.or(window.minutes()));
    outside.forEach(window -> free.andNot(window.minutes()));
    return free.cardinality();
  }

  private BitSet minutes() {
    BitSet minutes = new BitSet(MINUTES_PER_DAY);
    if (from_min < until_min) {
      minutes.set(from_min, until_min);
    } else {
      minutes.set(from_min, MINUTES_PER_DAY);
      minutes.set(0, until_min);
    }
    return minutes;
  }

  @Override
  public String toString() {
    return clock(from_min) + "-" + clock(until_min);
  }

  private static String clock(int minute) {
    return "" + minute / 600 + minute / 60 % 10 + ":" + minute % 60 / 10 + minute % 10;
  }
}
