package deadband.reading;

import java.time.DateTimeException;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A time as it stands in a day file: a time of day, or a date and time by ISO 8601 (a blank may
 * stand for the T), to the second.
 *
 * @param kind how it is written
 * @param local_s seconds by the clock, since midnight or since the first of January 1970 [s]
 * @param offset_s how far that clock is ahead of UTC, 0 where it is not entered [s]
 */
record Stamp(Kind kind, long local_s, int offset_s) {

  private static final int SECONDS_PER_MINUTE = 60;
  private static final int SECONDS_PER_HOUR = 3600;
  static final int SECONDS_PER_DAY = 24 * SECONDS_PER_HOUR;
  private static final int DATE_LENGTH = 10;
  private static final int MOST_OFFSET_S = 18 * SECONDS_PER_HOUR;
  private static final int WRONG = -1;

  /** How a time is written. */
  enum Kind {
    CLOCK("a time of day"),
    LOCAL("a date and time"),
    OFFSET("a date and time with its offset");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  /** Seconds that go by evenly, whatever the clock does [s]. */
  long instant_s() {
    return local_s - offset_s;
  }

  /** Second of the day by the clock [s]. */
  int secondOfDay() {
    return (int) Math.floorMod(local_s, (long) SECONDS_PER_DAY);
  }

  /** The time that a cell tells, null where it tells none. */
  static @Nullable Stamp of(String cell) {
    if (cell.length() <= DATE_LENGTH || cell.charAt(4) != '-') {
      int second = second(cell);
      return second == WRONG ? null : new Stamp(Kind.CLOCK, second, 0);
    }
    long day = day(cell);
    boolean parted = "Tt ".indexOf(cell.charAt(DATE_LENGTH)) >= 0;
    return parted && day != Long.MIN_VALUE
        ? dated(day * SECONDS_PER_DAY, cell.substring(DATE_LENGTH + 1))
        : null;
  }

  private static @Nullable Stamp dated(long day_s, String rest) {
    int at = offsetStart(rest);
    int second = second(rest.substring(0, at).stripTrailing());
    if (second == WRONG) {
      return null;
    }
    if (at == rest.length()) {
      return new Stamp(Kind.LOCAL, day_s + second, 0);
    }
    int offset_s = offset_s(rest.substring(at));
    return Math.abs(offset_s) > MOST_OFFSET_S
        ? null
        : new Stamp(Kind.OFFSET, day_s + second, offset_s);
  }

  private static int offsetStart(String rest) {
    int at = 0;
    while (at < rest.length() && "+-Zz".indexOf(rest.charAt(at)) < 0) {
      at++;
    }
    return at;
  }

  /** Z, +hh, +hhmm or +hh:mm; too large a number where it is none of them. */
  private static int offset_s(String offset) {
    if (offset.equals("Z") || offset.equals("z")) {
      return 0;
    }
    boolean colon = offset.length() == 6 && offset.charAt(3) == ':';
    boolean right = colon || offset.length() == 3 || offset.length() == 5;
    if (!right) {
      return Integer.MAX_VALUE;
    }
    int hours = number(offset, 1, 3);
    int minutes = offset.length() == 3 ? 0 : number(offset, offset.length() - 2, offset.length());
    if (hours == WRONG || minutes < 0 || minutes >= 60) {
      return Integer.MAX_VALUE;
    }
    int ahead_s = hours * SECONDS_PER_HOUR + minutes * SECONDS_PER_MINUTE;
    return offset.charAt(0) == '-' ? -ahead_s : ahead_s;
  }

  private static long day(String cell) {
    int year = number(cell, 0, 4);
    int month = number(cell, 5, 7);
    int day = cell.charAt(7) == '-' ? number(cell, 8, DATE_LENGTH) : WRONG;
    if (year == WRONG || month == WRONG || day == WRONG) {
      return Long.MIN_VALUE;
    }
    try {
      return LocalDate.of(year, month, day).toEpochDay();
    } catch (DateTimeException e) {
      return Long.MIN_VALUE;
    }
  }

  /** H:MM, HH:MM or HH:MM:SS, the seconds whole. */
  private static int second(String clock) {
    int colon = clock.indexOf(':');
    if (colon < 1 || colon > 2) {
      return WRONG;
    }
    int hours = number(clock, 0, colon);
    int minutes = number(clock, colon + 1, colon + 3);
    int seconds = seconds(clock, colon + 3);
    boolean right =
        hours >= 0 && hours < 24 && minutes >= 0 && minutes < 60 && seconds >= 0 && seconds < 60;
    return right ? hours * SECONDS_PER_HOUR + minutes * SECONDS_PER_MINUTE + seconds : WRONG;
  }

  private static int seconds(String clock, int at) {
    if (at >= clock.length()) {
      return 0;
    }
    boolean whole = clock.length() == at + 3 || isZeroFraction(clock, at + 3);
    return clock.charAt(at) == ':' && whole ? number(clock, at + 1, at + 3) : WRONG;
  }

  private static boolean isZeroFraction(String clock, int at) {
    if (clock.length() < at + 2 || ".,".indexOf(clock.charAt(at)) < 0) {
      return false;
    }
    return clock.chars().skip(at + 1L).allMatch(digit -> digit == '0');
  }

  private static int number(String text, int from, int until) {
    if (until > text.length()) {
      return WRONG;
    }
    int number = 0;
    for (int at = from; at < until; at++) {
      if (!Figures.isDigit(text.charAt(at))) {
        return WRONG;
      }
      number = 10 * number + text.charAt(at) - '0';
    }
    return number;
  }
}
