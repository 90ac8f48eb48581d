package deadband.meterlog;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Makes a log of raw readings: sets the clock straight, puts rows in order, finds interval and
 * gaps, and brings counters and energies to mean powers.
 */
public final class Assembly {

  /** Longer than this without a row is a gap in a log that writes only what changes [s]. */
  private static final int SILENT_S = 900;

  private final Readings raw;
  private final List<String> clockChanges = new ArrayList<>();
  private int moved;
  private int repeats;
  private int unequal;

  private Assembly(Readings raw) {
    this.raw = raw;
  }

  /** The log; its readings have two rows or more. */
  public static MeterLog of(Readings raw) {
    return new Assembly(raw).log();
  }

  private MeterLog log() {
    clockChanges.addAll(Clock.setRight(raw));
    int[] rows = distinct(sorted());
    MeterLog.Times times = times(rows);
    List<Column> columns = new Conversion(raw, rows, times).columns();
    if (!raw.local()) {
      seenClockChanges(times);
    }
    return new MeterLog(
        raw.name(), times, new MeterLog.Order(repeats, unequal, moved, clockChanges), columns);
  }

  private void seenClockChanges(MeterLog.Times times) {
    for (int row = 1; row < times.clock_s().length; row++) {
      int change_s = times.clock_s()[row] - times.clock_s()[row - 1];
      if (change_s != 0) {
        clockChanges.add(
            "UTC offset changes by "
                + change_s / 60
                + " min on "
                + Clock.shows(times.at_s()[row] + times.clock_s()[row]).toLocalDate());
      }
    }
  }

  private int[] sorted() {
    boolean inOrder = true;
    for (int row = 1; row < raw.rows(); row++) {
      if (raw.at_s(row) < raw.at_s(row - 1)) {
        inOrder = false;
        moved++;
      }
    }
    IntStream rows = IntStream.range(0, raw.rows());
    return inOrder
        ? rows.toArray()
        : rows.boxed()
            .sorted(Comparator.comparingLong(raw::at_s))
            .mapToInt(Integer::intValue)
            .toArray();
  }

  /** The first row of each instant; what it lacks is filled from its repeats. */
  private int[] distinct(int[] rows) {
    int[] kept = new int[rows.length];
    int count = 0;
    for (int row : rows) {
      if (count > 0 && raw.at_s(kept[count - 1]) == raw.at_s(row)) {
        repeats++;
        unequal += merged(kept[count - 1], row) ? 0 : 1;
      } else {
        kept[count++] = row;
      }
    }
    return Arrays.copyOf(kept, count);
  }

  private boolean merged(int first, int repeat) {
    boolean equal = true;
    for (int column = 0; column < raw.headings().size(); column++) {
      double value = raw.value(column, repeat);
      if (Double.isNaN(raw.value(column, first))) {
        raw.fill(column, first, value);
      } else if (!Double.isNaN(value) && value != raw.value(column, first)) {
        equal = false;
      }
    }
    return equal;
  }

  private MeterLog.Times times(int[] rows) {
    long[] at_s = new long[rows.length];
    int[] clock_s = new int[rows.length];
    for (int row = 0; row < rows.length; row++) {
      at_s[row] = raw.at_s(rows[row]);
      clock_s[row] = raw.offset_s(rows[row]);
    }
    long[] steps_s = new long[Math.max(1, rows.length - 1)];
    for (int row = 0; row + 1 < rows.length; row++) {
      steps_s[row] = at_s[row + 1] - at_s[row];
    }
    long[] ordered = steps_s.clone();
    Arrays.sort(ordered);
    long median_s = ordered[ordered.length / 2];
    long near = Arrays.stream(steps_s).filter(s -> Math.abs(s - median_s) <= median_s / 10).count();
    boolean regular = near >= 0.6 * steps_s.length;
    int interval_s = (int) Math.max(1, Math.min(Integer.MAX_VALUE, median_s));
    long longest_s = regular ? interval_s + interval_s / 2 : Math.max(10 * median_s, SILENT_S);
    return spanned(
        new MeterLog.Times(
            raw.dated(),
            regular,
            interval_s,
            at_s,
            new int[rows.length],
            clock_s,
            new ArrayList<>()),
        longest_s);
  }

  private static MeterLog.Times spanned(MeterLog.Times times, long longest_s) {
    long[] at_s = times.at_s();
    for (int row = 0; row < at_s.length; row++) {
      long next_s = row + 1 < at_s.length ? at_s[row + 1] - at_s[row] : times.interval_s();
      boolean gap = next_s > longest_s;
      times.span_s()[row] = (int) (gap ? times.interval_s() : next_s);
      if (gap) {
        long from_s = at_s[row] + times.interval_s();
        times
            .gaps()
            .add(
                new MeterLog.Gap(
                    Clock.shows(from_s + times.clock_s()[row]),
                    Clock.shows(at_s[row + 1] + times.clock_s()[row + 1]),
                    (at_s[row + 1] - from_s) / 3600.0));
      }
    }
    return times;
  }
}
