package deadband.meterlog;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The clock of a log set right: daylight saving of a local clock, and rows of a clock that ran fast
 * or slow for a while. A clock that was put back for good is said.
 */
final class Clock {

  private static final int HOUR_S = 3600;

  /** Rows that show the interval. */
  private static final int SHOWN = 20_000;

  /** So many rows in a row are no single ones out of order. */
  private static final int MANY = 5;

  private final Readings raw;
  private final long step_s;
  private final List<String> changes = new ArrayList<>();

  private Clock(Readings raw) {
    this.raw = raw;
    this.step_s = usual();
  }

  /** Sets the rows right; what was seen of the clock, in words. */
  static List<String> setRight(Readings raw) {
    if (!raw.dated()) {
      return List.of();
    }
    Clock clock = new Clock(raw);
    if (raw.local()) {
      clock.setDaylightSaving();
    }
    clock.setExcursions();
    return clock.changes;
  }

  /** Daylight saving in a local clock: an hour left out or run twice, on a Sunday night. */
  private void setDaylightSaving() {
    int ahead_s = 0;
    for (int row = 1; row < raw.rows(); row++) {
      long jump_s = raw.at_s(row) - (raw.at_s(row - 1) - ahead_s);
      // the rows above are already on the time before the change
      int change_s = change_s(row, jump_s, ahead_s);
      if (change_s != 0) {
        ahead_s += change_s;
        changes.add(
            "local clock "
                + (change_s > 0 ? "put back" : "put forward")
                + " by an hour on "
                + shows(raw.at_s(row)).toLocalDate());
      }
      if (ahead_s != 0) {
        raw.shift(row, ahead_s);
      }
    }
  }

  /** What must be added from this row on; 0 where the clock was not changed. */
  private int change_s(int row, long jump_s, int ahead_s) {
    if (!isChangeNight(shows(raw.at_s(row)))) {
      return 0;
    }
    long off_s = Math.min(step_s / 2, 60);
    if (Math.abs(jump_s - HOUR_S - step_s) <= off_s && ahead_s > -HOUR_S) {
      return -HOUR_S;
    }
    // of hourly rows the hour that runs twice is one instant with two readings
    boolean again = jump_s < 0 || (jump_s == 0 && !raw.isSame(row - 1, row));
    boolean back = again && Math.abs(jump_s + HOUR_S - step_s) <= off_s;
    return back && ahead_s < HOUR_S ? HOUR_S : 0;
  }

  private static boolean isChangeNight(LocalDateTime at) {
    int month = at.getMonthValue();
    boolean season = month == 3 || month == 4 || (month >= 9 && month <= 11);
    return season && at.getDayOfWeek() == DayOfWeek.SUNDAY && at.getHour() <= 4;
  }

  /**
   * Rows between a jump and the jump back by as much are moved back to where they belong, where
   * both ends then meet. A clock that goes back alone is said.
   */
  private void setExcursions() {
    int from = 0;
    for (int row = 1; row < raw.rows(); row++) {
      long off_s = raw.at_s(row) - raw.at_s(row - 1) - step_s;
      if (Math.abs(off_s) <= 2 * step_s) {
        continue;
      }
      int until = back(row, off_s);
      if (until > 0) {
        for (int moved = row; moved < until; moved++) {
          raw.moveTo(moved, raw.at_s(moved) - off_s);
        }
        changes.add(
            String.format(
                Locale.ROOT,
                "clock %s %s for %d rows from %s on, put right",
                MeterLog.duration(Math.abs(off_s)),
                off_s > 0 ? "fast" : "slow",
                until - row,
                local(row)));
        row = until;
      } else if (off_s < 0 && runsOn(from, row) && runsOn(row, row + MANY)) {
        changes.add("clock put back by " + MeterLog.duration(-off_s) + " at " + local(row));
      }
      from = row;
    }
  }

  /** The row at which a jump is undone, after many that keep the step; 0 where there is none. */
  private int back(int row, long off_s) {
    for (int next = row + 1; next < raw.rows(); next++) {
      long change_s = raw.at_s(next) - raw.at_s(next - 1) - step_s;
      if (Math.abs(change_s) > 2 * step_s) {
        boolean undone = Math.abs(change_s + off_s) <= step_s / 2;
        return undone && next - row >= MANY ? next : 0;
      }
    }
    return 0;
  }

  /** Whether many rows up to here, or from here on, keep the step. */
  private boolean runsOn(int from, int until) {
    for (int row = from + 1; row < until && row < raw.rows(); row++) {
      if (Math.abs(raw.at_s(row) - raw.at_s(row - 1) - step_s) > 2 * step_s) {
        return false;
      }
    }
    return until - from >= MANY;
  }

  private LocalDateTime local(int row) {
    return shows(raw.at_s(row) + raw.offset_s(row));
  }

  /** What a clock shows that is at so many seconds since 1970. */
  static LocalDateTime shows(long at_s) {
    return LocalDateTime.ofEpochSecond(at_s, 0, ZoneOffset.UTC);
  }

  /** The time between two rows that is met most often [s]; the first rows show it. */
  private long usual() {
    Map<Long, Integer> counts = new TreeMap<>();
    for (int row = 1; row < Math.min(raw.rows(), SHOWN); row++) {
      long step_s = raw.at_s(row) - raw.at_s(row - 1);
      if (step_s > 0) {
        counts.merge(step_s, 1, Integer::sum);
      }
    }
    return counts.entrySet().stream()
        .max(Map.Entry.<Long, Integer>comparingByValue().thenComparing(e -> -e.getKey()))
        .map(Map.Entry::getKey)
        .orElse(0L);
  }
}
