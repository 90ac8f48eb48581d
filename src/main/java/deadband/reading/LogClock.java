package deadband.reading;

import deadband.meterlog.Readings;
import java.time.LocalDate;

/**
 * Takes the times of a log: ISO 8601, day or month first, epoch seconds or milliseconds, with or
 * without offset. Which of day and month comes first may show only in a later row.
 */
final class LogClock {

  private static final int DAY_S = 86_400;
  private static final int OLDEST_EPOCH_DIGITS = 9;

  /** How its dates are written. */
  enum Dates {
    NONE,
    ISO,
    DAY_FIRST,
    MONTH_FIRST,
    /** Day or month first: no row shows which. */
    OPEN,
    EPOCH
  }

  private Dates dates = Dates.NONE;
  private boolean offsets;
  private int openRows;
  private long instant_s;
  private int clock_s;
  private boolean openDate;

  private int lastDate;
  private long lastDay = Long.MIN_VALUE;
  private String text = "";
  private int at;

  Dates dates() {
    return dates;
  }

  /** Whether times have an offset from UTC, or are UTC. */
  boolean hasOffsets() {
    return offsets;
  }

  /** Instant of the last time taken [s since 1970]; of a local clock as if it were UTC. */
  long instant_s() {
    return instant_s;
  }

  /** What the local clock is ahead of it [s]. */
  int clock_s() {
    return clock_s;
  }

  /** Takes a time; false where the text is none. */
  boolean take(String cell) {
    text = cell;
    at = 0;
    clock_s = 0;
    openDate = false;
    if (isDigits(cell) && cell.length() >= OLDEST_EPOCH_DIGITS && !isCompact(cell)) {
      return epoch(cell);
    }
    long day = date();
    if (day == Long.MIN_VALUE) {
      return false;
    }
    if (at < text.length() && (text.charAt(at) == 'T' || text.charAt(at) == ',')) {
      at++;
    }
    blanks();
    int second = at == text.length() && dates != Dates.NONE ? 0 : timeOfDay();
    if (second < 0) {
      return false;
    }
    blanks();
    if (!offset()) {
      return false;
    }
    blanks();
    instant_s = day * DAY_S + second - clock_s;
    return at == text.length();
  }

  /** Counts a row that was kept, so that its date can be turned once it is sure. */
  void kept(int row) {
    if (openDate && dates == Dates.OPEN) {
      openRows = row + 1;
    }
  }

  private static boolean isDigits(String cell) {
    for (int index = 0; index < cell.length(); index++) {
      char c = cell.charAt(index);
      if ((c < '0' || c > '9') && c != '.') {
        return false;
      }
    }
    return !cell.isEmpty() && cell.indexOf('.') == cell.lastIndexOf('.');
  }

  /** Such as 202603311415 or 20260331141500, which no epoch of our time looks like. */
  private static boolean isCompact(String cell) {
    return (cell.length() == 12 || cell.length() == 14)
        && cell.indexOf('.') < 0
        && (cell.startsWith("20") && cell.charAt(4) <= '1' && cell.charAt(6) <= '3');
  }

  private boolean epoch(String cell) {
    double number = Double.parseDouble(cell);
    double seconds = number > 1e11 ? number / 1000 : number;
    dates = Dates.EPOCH;
    offsets = true;
    instant_s = Math.round(seconds);
    return seconds < 4e9;
  }

  /** Days since 1970, 0 where the text begins with a time of day, or the least number for none. */
  private long date() {
    int start = at;
    int first = number();
    if (first < 0) {
      return Long.MIN_VALUE;
    }
    int width = at - start;
    if (width >= 8) {
      return compact(start);
    }
    if (at < text.length() && text.charAt(at) == ':') {
      at = start;
      return 0;
    }
    char mark = at < text.length() ? text.charAt(at) : ' ';
    if (mark != '-' && mark != '/' && mark != '.') {
      return Long.MIN_VALUE;
    }
    at++;
    int second = number();
    if (second < 0 || at >= text.length() || text.charAt(at) != mark) {
      return Long.MIN_VALUE;
    }
    at++;
    int third = number();
    if (width == 4) {
      dates = Dates.ISO;
      return day(first, second, third);
    }
    int year = third < 100 && third >= 0 ? 2000 + third : third;
    return ordered(first, second, year, mark == '.');
  }

  private long compact(int start) {
    dates = Dates.ISO;
    at = start + 8;
    String digits = text.substring(start, at);
    return day(
        Integer.parseInt(digits.substring(0, 4)),
        Integer.parseInt(digits.substring(4, 6)),
        Integer.parseInt(digits.substring(6)));
  }

  private long ordered(int first, int second, int year, boolean points) {
    if (dates == Dates.NONE) {
      dates = points ? Dates.DAY_FIRST : Dates.OPEN;
    }
    if (dates == Dates.OPEN && first > 12) {
      dates = Dates.DAY_FIRST;
      openRows = 0;
    } else if (dates == Dates.OPEN && second > 12) {
      dates = Dates.MONTH_FIRST;
    }
    openDate = dates == Dates.OPEN;
    return dates == Dates.MONTH_FIRST ? day(year, first, second) : day(year, second, first);
  }

  /** Days since 1970; most rows have the date of the row before. */
  private long day(int year, int month, int day) {
    int date = (year * 100 + month) * 100 + day;
    if (date != lastDate) {
      lastDay = calendarDay(year, month, day);
      lastDate = date;
    }
    return lastDay;
  }

  private static long calendarDay(int year, int month, int day) {
    boolean real = year >= 1970 && year < 2200 && month >= 1 && month <= 12 && day >= 1;
    return real && day <= LocalDate.of(year, month, 1).lengthOfMonth()
        ? LocalDate.of(year, month, day).toEpochDay()
        : Long.MIN_VALUE;
  }

  private int timeOfDay() {
    int start = at;
    int hour = number();
    int minute;
    int second = 0;
    if (hour >= 0 && at - start >= 4 && dates == Dates.ISO) {
      // compact: HHMM or HHMMSS
      boolean seconds = at - start == 6;
      second = seconds ? hour % 100 : 0;
      minute = (seconds ? hour / 100 : hour) % 100;
      hour = hour / (seconds ? 10_000 : 100);
    } else {
      if (hour < 0 || at >= text.length() || (text.charAt(at) != ':' && text.charAt(at) != '.')) {
        return -1;
      }
      at++;
      minute = number();
      if (at + 1 < text.length() && text.charAt(at) == ':') {
        at++;
        second = number();
        fraction();
      }
    }
    hour = halfDay(hour);
    boolean real = hour >= 0 && minute >= 0 && minute < 60 && second >= 0 && second <= 60;
    return real && hour * 3600 + minute * 60 + second <= DAY_S
        ? hour * 3600 + minute * 60 + second
        : -1;
  }

  private void fraction() {
    if (at < text.length() && (text.charAt(at) == '.' || text.charAt(at) == ',')) {
      at++;
      number();
    }
  }

  private int halfDay(int hour) {
    int mark = at;
    blanks();
    boolean am = text.regionMatches(true, at, "am", 0, 2);
    boolean pm = text.regionMatches(true, at, "pm", 0, 2);
    if (!am && !pm) {
      at = mark;
      return hour;
    }
    at += 2;
    return hour > 12 ? -1 : hour % 12 + (pm ? 12 : 0);
  }

  private boolean offset() {
    if (at == text.length()) {
      return true;
    }
    char sign = text.charAt(at);
    if (sign == 'Z' || text.startsWith("UTC", at) || text.startsWith("GMT", at)) {
      at += sign == 'Z' ? 1 : 3;
      offsets = true;
      return true;
    }
    if (sign != '+' && sign != '-') {
      return false;
    }
    at++;
    int start = at;
    int hours = number();
    int minutes = 0;
    if (at - start == 4) {
      minutes = hours % 100;
      hours /= 100;
    } else if (at < text.length() && text.charAt(at) == ':') {
      at++;
      minutes = number();
    }
    clock_s = (sign == '-' ? -1 : 1) * (hours * 3600 + minutes * 60);
    offsets = true;
    return hours >= 0 && hours <= 14 && minutes >= 0 && minutes < 60;
  }

  private void blanks() {
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
  }

  /** The digits from here on; −1 where there are none. */
  private int number() {
    int start = at;
    int value = 0;
    while (at < text.length() && at - start < 9) {
      int digit = text.charAt(at) - '0';
      if (digit < 0 || digit > 9) {
        break;
      }
      value = value * 10 + digit;
      at++;
    }
    return at > start ? value : -1;
  }

  /**
   * Settles what no row showed by itself, and turns the dates of rows taken before it was sure: the
   * order in which the rows run on without going back is the right one, else the day is first.
   */
  void settle(Readings readings) {
    if (dates == Dates.OPEN && backwards(readings, true) < backwards(readings, false)) {
      dates = Dates.MONTH_FIRST;
    }
    if (dates == Dates.MONTH_FIRST) {
      for (int row = 0; row < openRows; row++) {
        readings.moveTo(row, turned(readings.at_s(row)));
      }
    }
  }

  private static int backwards(Readings readings, boolean turned) {
    int count = 0;
    long before = Long.MIN_VALUE;
    for (int row = 0; row < readings.rows(); row++) {
      long now = turned ? turned(readings.at_s(row)) : readings.at_s(row);
      count += before != Long.MIN_VALUE && (now < before || now - before > 20L * DAY_S) ? 1 : 0;
      before = now;
    }
    return count;
  }

  /** The same time with day and month exchanged. */
  private static long turned(long at_s) {
    LocalDate date = LocalDate.ofEpochDay(Math.floorDiv(at_s, DAY_S));
    if (date.getDayOfMonth() > 12) {
      return at_s;
    }
    LocalDate other = LocalDate.of(date.getYear(), date.getDayOfMonth(), date.getMonthValue());
    return other.toEpochDay() * DAY_S + Math.floorMod(at_s, DAY_S);
  }
}
