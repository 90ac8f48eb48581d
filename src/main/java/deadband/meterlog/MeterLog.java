package deadband.meterlog;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What one or more meters recorded, in order of time. A row holds from its instant for its span;
 * between the end of a span and the next row nothing is known.
 */
public final class MeterLog {

  private static final long TWO_HOURS_S = 7200;

  private final String name;
  private final Times times;
  private final Order order;
  private final List<Column> columns;

  MeterLog(String name, Times times, Order order, List<Column> columns) {
    this.name = name;
    this.times = times;
    this.order = order;
    this.columns = List.copyOf(columns);
  }

  /** The rows' instants, what each covers, and the local clock; never compared. */
  @SuppressWarnings("ArrayRecordComponent") // a million rows
  record Times(
      boolean dated,
      boolean regular,
      int interval_s,
      long[] at_s,
      int[] span_s,
      int[] clock_s,
      List<Gap> gaps) {}

  /**
   * What was out of order in the file.
   *
   * @param repeats rows whose instant an earlier row has
   * @param unequal of these, rows with other values
   * @param moved rows that stood before a later one
   * @param clockChanges what was seen of the clock, in words
   */
  public record Order(int repeats, int unequal, int moved, List<String> clockChanges) {
    public Order {
      clockChanges = List.copyOf(clockChanges);
    }
  }

  /** A stretch without readings. */
  public record Gap(LocalDateTime from, LocalDateTime to, double hours) {}

  public String name() {
    return name;
  }

  public int rows() {
    return times.at_s.length;
  }

  /** Whether the times have a date. */
  public boolean dated() {
    return times.dated;
  }

  /** Whether the rows keep one interval. */
  public boolean regular() {
    return times.regular;
  }

  /** Time between two rows; of an irregular log the usual one [s]. */
  public int interval_s() {
    return times.interval_s;
  }

  /** Instant at which a row begins [s since 1970]. */
  public long at_s(int row) {
    return times.at_s[row];
  }

  /** How long a row holds [s]. */
  public int span_s(int row) {
    return times.span_s[row];
  }

  /** Instant at which a row no longer holds [s since 1970]. */
  public long end_s(int row) {
    return times.at_s[row] + times.span_s[row];
  }

  /** Whether a row begins where the one before it ends. */
  public boolean follows(int row) {
    return row > 0 && end_s(row - 1) == times.at_s[row];
  }

  /** Local time at which a row begins. */
  public LocalDateTime clock(int row) {
    return clock(row, times.at_s[row]);
  }

  /** How long it takes, in words: in minutes, from two hours on in hours. */
  public static String duration(long seconds) {
    return seconds >= TWO_HOURS_S
        ? String.format(Locale.ROOT, "%.1f h", seconds / 3600.0)
        : String.format(Locale.ROOT, "%.0f min", seconds / 60.0);
  }

  /** Local time of an instant in a row or at its end. */
  public LocalDateTime clock(int row, long instant_s) {
    return Clock.shows(instant_s + times.clock_s[row]);
  }

  /** Hour of the local day at which a row begins, 0 to below 24. */
  public double hour(int row) {
    return Math.floorMod(times.at_s[row] + times.clock_s[row], 86_400) / 3600.0;
  }

  public List<Gap> gaps() {
    return times.gaps;
  }

  public Order order() {
    return order;
  }

  public List<Column> columns() {
    return columns;
  }

  /** The column of a meaning. */
  public Optional<Column> column(Meaning meaning) {
    return columns.stream().filter(column -> column.meaning() == meaning).findFirst();
  }

  public boolean has(Meaning meaning) {
    return column(meaning).isPresent();
  }

  /** Hours for which a row holds, gaps not counted. */
  public double covered_h() {
    return Arrays.stream(times.span_s).asLongStream().sum() / 3600.0;
  }

  /** The rows from one until before another. */
  public MeterLog part(int from, int until) {
    List<Column> parts = new ArrayList<>();
    for (Column column : columns) {
      parts.add(
          new Column(
              column.heading(),
              column.form(),
              column.remark(),
              column.resolution(),
              Arrays.copyOfRange(column.values(), from, until)));
    }
    Times part =
        new Times(
            times.dated,
            times.regular,
            times.interval_s,
            Arrays.copyOfRange(times.at_s, from, until),
            Arrays.copyOfRange(times.span_s, from, until),
            Arrays.copyOfRange(times.clock_s, from, until),
            times.gaps);
    return new MeterLog(name, part, order, parts);
  }

  /**
   * This log with the columns of another over the same time: the rows stay those of the finer one,
   * and a row of the other holds for its span.
   */
  public MeterLog with(MeterLog other) {
    if (other.interval_s() < interval_s()) {
      return other.with(this);
    }
    List<Column> all = new ArrayList<>(columns);
    for (Column column : other.columns) {
      boolean wanted = !has(column.meaning()) || column.meaning() == Meaning.TANK;
      if (wanted && column.form() != Column.Form.DERIVED) {
        all.add(held(column, other));
      }
    }
    String both = name.equals(other.name) ? name : name + " + " + other.name;
    return new MeterLog(both, times, order, GridPower.netted(all));
  }

  private Column held(Column column, MeterLog other) {
    double[] values = new double[rows()];
    int at = 0;
    for (int row = 0; row < values.length; row++) {
      long now = at_s(row);
      while (at + 1 < other.rows() && other.at_s(at + 1) <= now) {
        at++;
      }
      boolean within = other.at_s(at) <= now && now < other.end_s(at);
      values[row] = within ? column.value(at) : Double.NaN;
    }
    return new Column(
        column.heading(), column.form(), column.remark(), column.resolution(), values);
  }
}
