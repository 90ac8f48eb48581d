package deadband.meterlog;

import deadband.meterlog.Column.Form;
import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Makes a log of raw readings: sets the clock straight, puts rows in order, finds interval and
 * gaps, and brings counters and energies to mean powers.
 */
public final class Assembly {

  private static final int HOUR_S = 3600;

  /** Rows that show interval and resolution. */
  private static final int SHOWN = 20_000;

  /** Longer than this without a row is a gap in a log that writes only what changes [s]. */
  private static final int SILENT_S = 900;

  /** Nothing but a counter rises for as long as this [s]. */
  private static final int LONG_S = 20 * HOUR_S;

  /** No home takes or gives more [kW]. */
  private static final double MOST_KW = 60;

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
    if (raw.local() && raw.dated()) {
      setClocks();
    }
    int[] rows = distinct(sorted());
    MeterLog.Times times = times(rows);
    List<Column> columns = new Conversion(raw, rows, times).columns();
    if (!raw.local()) {
      seenClockChanges(times);
    }
    return new MeterLog(
        raw.name(), times, new MeterLog.Order(repeats, unequal, moved, clockChanges), columns);
  }

  /** Daylight saving in a local clock: an hour left out or run twice, on a Sunday night. */
  private void setClocks() {
    long step_s = usual();
    int ahead_s = 0;
    for (int row = 1; row < raw.rows(); row++) {
      long jump_s = raw.at_s(row) - (raw.at_s(row - 1) - ahead_s);
      // the rows above are already on the time before the change
      int change_s = change_s(row, jump_s, step_s, ahead_s);
      if (change_s != 0) {
        ahead_s += change_s;
        clockChanges.add(
            "local clock "
                + (change_s > 0 ? "put back" : "put forward")
                + " by an hour on "
                + clock(raw.at_s(row)).toLocalDate());
      }
      if (ahead_s != 0) {
        raw.shift(row, ahead_s);
      }
    }
  }

  /** What must be added from this row on; 0 where the clock was not changed. */
  private int change_s(int row, long jump_s, long step_s, int ahead_s) {
    if (!isChangeNight(clock(raw.at_s(row)))) {
      return 0;
    }
    long off_s = Math.min(step_s / 2, 60);
    if (Math.abs(jump_s - HOUR_S - step_s) <= off_s && ahead_s > -HOUR_S) {
      return -HOUR_S;
    }
    boolean back = jump_s < 0 && Math.abs(jump_s + HOUR_S - step_s) <= off_s;
    return back && ahead_s < HOUR_S ? HOUR_S : 0;
  }

  private static boolean isChangeNight(LocalDateTime at) {
    int month = at.getMonthValue();
    boolean season = month == 3 || month == 4 || (month >= 9 && month <= 11);
    return season && at.getDayOfWeek() == DayOfWeek.SUNDAY && at.getHour() <= 4;
  }

  private static LocalDateTime clock(long at_s) {
    return LocalDateTime.ofEpochSecond(at_s, 0, ZoneOffset.UTC);
  }

  private void seenClockChanges(MeterLog.Times times) {
    for (int row = 1; row < times.clock_s().length; row++) {
      int change_s = times.clock_s()[row] - times.clock_s()[row - 1];
      if (change_s != 0) {
        clockChanges.add(
            "UTC offset changes by "
                + change_s / 60
                + " min on "
                + clock(times.at_s()[row] + times.clock_s()[row]).toLocalDate());
      }
    }
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
                    clock(from_s + times.clock_s()[row]),
                    clock(at_s[row + 1] + times.clock_s()[row + 1]),
                    (at_s[row + 1] - from_s) / 3600.0));
      }
    }
    return times;
  }

  /** Brings each column to mean powers, temperatures or states. */
  @SuppressWarnings("ArrayRecordComponent") // a million rows
  private record Conversion(Readings raw, int[] rows, MeterLog.Times times) {

    List<Column> columns() {
      List<Column> columns = new ArrayList<>();
      for (int index = 0; index < raw.headings().size(); index++) {
        columns.add(column(index));
      }
      return new Grid(times, new OneEach(columns).columns()).columns();
    }

    private Column column(int index) {
      Heading heading = raw.headings().get(index);
      double[] values = new double[rows.length];
      Arrays.setAll(values, row -> raw.value(index, rows[row]));
      if (heading.meaning() == Meaning.CALL) {
        return new Column(heading, Form.STATE, "", 0, values);
      }
      if (heading.unit().isDegrees() || heading.meaning().isTemperature()) {
        Arrays.setAll(values, row -> heading.unit().brought(values[row]));
        return new Column(heading, Form.TEMPERATURE, "", resolution(values), values);
      }
      return power(heading, values);
    }

    private Column power(Heading heading, double[] values) {
      LogUnit unit = heading.unit();
      String remark = "";
      if (unit == LogUnit.NONE) {
        unit = likely(heading.name(), values);
        remark = "no unit in the header, taken as " + unit.word();
      }
      LogUnit in = unit;
      Arrays.setAll(values, row -> in.brought(values[row]));
      double resolution = resolution(values);
      if (!unit.isEnergy()) {
        return new Column(heading, Form.POWER, remark, resolution, values);
      }
      boolean counter = isCounter(values);
      double[] power_kW = counter ? fromCounter(values) : fromEnergy(values);
      return new Column(
          heading,
          counter ? Form.COUNTER : Form.ENERGY,
          remark,
          resolution * HOUR_S / times.interval_s(),
          power_kW);
    }

    /** The unit of a column that names none: homes stay below 60 kW. */
    private LogUnit likely(String name, double[] values) {
      double most = Arrays.stream(values).filter(Double::isFinite).map(Math::abs).max().orElse(0);
      if (name.toLowerCase(Locale.ROOT).contains("energ")) {
        return most > MOST_KW && !isCounter(values) ? LogUnit.WH : LogUnit.KWH;
      }
      return most > MOST_KW ? LogUnit.W : LogUnit.KW;
    }

    /** Smallest difference between two values that is met again and again. */
    private static double resolution(double[] values) {
      Map<Long, Integer> steps = new TreeMap<>();
      for (int row = 1; row < Math.min(values.length, SHOWN); row++) {
        double step = Math.abs(values[row] - values[row - 1]);
        if (step > 1e-6) {
          steps.merge(Math.round(step * 1e6), 1, Integer::sum);
        }
      }
      return steps.isEmpty() ? 0 : steps.keySet().iterator().next() / 1e6;
    }

    /**
     * Whether energies are readings of a counter: they rise, but for an exchange. Where the log is
     * short an energy in the interval may rise too, as PV does in the morning: then a counter is
     * known by readings that no home reaches in an interval.
     */
    private boolean isCounter(double[] values) {
      double first = Double.NaN;
      double last = 0;
      double before = Double.NaN;
      double most = 0;
      int rises = 0;
      int falls = 0;
      int seen = 0;
      for (double value : values) {
        if (Double.isNaN(value)) {
          continue;
        }
        if (seen++ == 0) {
          first = value;
        } else {
          rises += value > before ? 1 : 0;
          falls += value < before ? 1 : 0;
          most = Math.max(most, value - before);
        }
        before = value;
        last = Math.max(last, value);
      }
      boolean rising = rises > 0 && first >= 0 && falls <= seen / 20;
      boolean isLong = (double) seen * times.interval_s() >= LONG_S;
      boolean high = last * HOUR_S / times.interval_s() > MOST_KW || first > 10 * most;
      return rising && (isLong || high);
    }

    private double[] fromEnergy(double[] energy_kWh) {
      double[] power_kW = new double[energy_kWh.length];
      Arrays.setAll(power_kW, row -> energy_kWh[row] * HOUR_S / times.span_s()[row]);
      return power_kW;
    }

    private double[] fromCounter(double[] counter_kWh) {
      double[] power_kW = new double[counter_kWh.length];
      for (int row = 0; row < power_kW.length; row++) {
        boolean last = row + 1 == power_kW.length;
        boolean next = !last && times.at_s()[row] + times.span_s()[row] == times.at_s()[row + 1];
        double rise_kWh = next ? counter_kWh[row + 1] - counter_kWh[row] : Double.NaN;
        // a counter that falls was reset or exchanged
        power_kW[row] = rise_kWh >= 0 ? rise_kWh * HOUR_S / times.span_s()[row] : Double.NaN;
      }
      return power_kW;
    }
  }

  /** One column a meaning: phases are added up, a power is preferred to an energy. */
  private record OneEach(List<Column> all) {

    List<Column> columns() {
      List<Column> chosen = new ArrayList<>();
      for (Column column : all) {
        if (column.meaning() == Meaning.TANK || column.meaning() == Meaning.UNKNOWN) {
          chosen.add(column);
        } else if (chosen.stream().noneMatch(other -> other.meaning() == column.meaning())) {
          chosen.add(best(all.stream().filter(c -> c.meaning() == column.meaning()).toList()));
        }
      }
      return chosen;
    }

    private static Column best(List<Column> same) {
      List<Column> phases = same.stream().filter(OneEach::isPhase).toList();
      if (phases.size() > 1 && phases.size() == same.size()) {
        double[] sum = phases.get(0).values();
        for (Column phase : phases.subList(1, phases.size())) {
          Arrays.setAll(sum, row -> sum[row] + phase.value(row));
        }
        Column first = phases.get(0);
        return new Column(
            first.heading(),
            first.form(),
            "sum of " + phases.size() + " columns",
            first.resolution(),
            sum);
      }
      return same.stream()
          .filter(column -> column.form() == Form.POWER)
          .findFirst()
          .orElse(same.get(0));
    }

    private static boolean isPhase(Column column) {
      return column
          .heading()
          .name()
          .toLowerCase(Locale.ROOT)
          .matches(".*(\\b|_)([lt][123]|phase|tariff|tarif)(\\b|_| ).*");
    }
  }

  /** The grid's sign: import positive, as said in the header or found out. */
  private record Grid(MeterLog.Times times, List<Column> all) {

    List<Column> columns() {
      List<Column> columns = new ArrayList<>();
      for (Column column : all) {
        columns.add(signed(column));
      }
      if (find(columns, Meaning.GRID) == null) {
        Column in = find(columns, Meaning.IMPORT);
        Column out = find(columns, Meaning.EXPORT);
        if (in != null) {
          columns.add(net(in, out));
        }
      }
      return columns;
    }

    private static @Nullable Column find(List<Column> columns, Meaning meaning) {
      return columns.stream().filter(c -> c.meaning() == meaning).findFirst().orElse(null);
    }

    private static Column net(Column in, @Nullable Column out) {
      double[] net = in.values();
      if (out != null) {
        Arrays.setAll(net, row -> net[row] - out.value(row));
      }
      return new Column(
          in.heading().as(Meaning.GRID, "import less export"),
          Form.DERIVED,
          out == null ? "import alone: what is exported cannot be seen" : "import less export",
          in.resolution(),
          net);
    }

    private Column signed(Column column) {
      boolean negative = Arrays.stream(column.values()).anyMatch(value -> value < -0.02);
      if (column.meaning() == Meaning.IMPORT && negative) {
        return with(column, 1, "negative values: import positive, export negative");
      }
      if (column.meaning() == Meaning.EXPORT && negative) {
        return with(column, -1, "negative values: export positive, import negative");
      }
      return column.meaning() == Meaning.GRID ? found(column, negative) : column;
    }

    private Column found(Column grid, boolean negative) {
      Column pv = find(all, Meaning.PV);
      double slope = pv == null ? 0 : bySun(grid, pv);
      if (slope != 0) {
        return with(grid, slope < 0 ? 1 : -1, sign(slope < 0) + ", since it follows the PV power");
      }
      if (!negative) {
        return with(grid, 1, "no negative values: taken as import alone");
      }
      double day = mean(grid, 10, 15);
      double night = Math.max(mean(grid, 0, 4), mean(grid, 22, 24));
      if (Double.isNaN(day) || Double.isNaN(night) || Math.abs(day - night) < 0.1) {
        return with(grid, 1, "sign taken as import positive: neither header nor values show it");
      }
      return with(
          grid,
          day < night ? 1 : -1,
          sign(day < night)
              + ", since by day it is "
              + (day < night ? "lower" : "higher")
              + " than at night");
    }

    private static String sign(boolean importPositive) {
      return importPositive ? "sign found: import positive" : "sign found: export positive, turned";
    }

    /** What the grid does as the PV power rises; 0 where that does not show. */
    private static double bySun(Column grid, Column pv) {
      double most = Arrays.stream(pv.values()).filter(Double::isFinite).max().orElse(0);
      double high = mean(grid, pv, 0.5 * most, Double.POSITIVE_INFINITY);
      double none = mean(grid, pv, Double.NEGATIVE_INFINITY, 0.02 * most);
      double slope = high - none;
      return most < 0.2 || Double.isNaN(slope) || Math.abs(slope) < 0.1 * most ? 0 : slope;
    }

    private static double mean(Column grid, Column pv, double above, double below) {
      return IntStream.range(0, grid.rows())
          .filter(row -> pv.value(row) >= above && pv.value(row) <= below)
          .mapToDouble(grid::value)
          .filter(Double::isFinite)
          .average()
          .orElse(Double.NaN);
    }

    private double mean(Column grid, double from_h, double to_h) {
      return IntStream.range(0, grid.rows())
          .filter(
              row -> {
                double hour =
                    Math.floorMod(times.at_s()[row] + times.clock_s()[row], 86_400) / 3600.0;
                return hour >= from_h && hour < to_h;
              })
          .mapToDouble(grid::value)
          .filter(Double::isFinite)
          .average()
          .orElse(Double.NaN);
    }

    private static Column with(Column column, int sign, String remark) {
      double[] values = column.values();
      Arrays.setAll(values, row -> sign * values[row] + 0.0);
      String both = column.remark().isEmpty() ? remark : column.remark() + "; " + remark;
      return new Column(
          column.heading().as(Meaning.GRID, column.heading().because()),
          column.form(),
          both,
          column.resolution(),
          values);
    }
  }
}
