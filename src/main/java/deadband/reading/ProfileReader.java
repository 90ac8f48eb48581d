package deadband.reading;

import deadband.dayrun.Profile;
import deadband.dayrun.StepLength;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.document.Span;
import deadband.reading.DayHeader.Measured;
import deadband.reading.ProfileReading.Column;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads one day file: header, rows, times, gaps, profile. */
final class ProfileReader {

  /** No home has more [kW]: beyond it a power is more likely in watts. */
  static final double MOST_KW = 100;

  /** Beyond this a draw-off is more likely in litres an hour [L/min]. */
  private static final double MOST_L_PER_MIN = 100;

  /** A year of seconds is more than any run needs, and what memory is set aside for. */
  private static final int MOST_STEPS = 40_000_000;

  private final Source source;
  private final Gaps gaps;
  private final Problems problems;
  private final Rows rows;
  private final Decimals decimals;
  private final Set<Column> doubted = EnumSet.noneOf(Column.class);
  private @Nullable Stamp first;
  private int firstLine;

  private ProfileReader(Source source, Gaps gaps) {
    this.source = source;
    this.gaps = gaps;
    this.problems = new Problems(source);
    this.rows = new Rows(source);
    this.decimals = new Decimals(!rows.partedByComma());
  }

  static ProfileReading read(Source source, Gaps gaps) {
    return new ProfileReader(source, gaps).read();
  }

  private ProfileReading read() {
    Iterator<Rows.Row> remaining = rows.iterator();
    if (!remaining.hasNext()) {
      problems.add(Kind.EMPTY, "no row", "a header such as time,pv_kW,house_kW and a row a step");
      return unreadable();
    }
    DayHeader header = DayHeader.of(source, rows, remaining.next(), problems);
    return problems.isEmpty() ? read(header, remaining) : unreadable();
  }

  private ProfileReading read(DayHeader header, Iterator<Rows.Row> remaining) {
    DayTable table = new DayTable(header.measured().size());
    while (remaining.hasNext() && !problems.isFull()) {
      row(header, remaining.next(), table);
    }
    doubtedDecimals();
    if (table.rows() < 2 && problems.isEmpty()) {
      problems.add(
          Kind.MISSING,
          table.rows() == 0 ? "a header and no row" : "one row",
          "two rows or more: the step is the time between them");
    }
    return table.rows() < 2 || first == null || problems.isFull()
        ? unreadable()
        : read(header, table, first);
  }

  private ProfileReading read(DayHeader header, DayTable table, Stamp first) {
    Timeline.Steps steps =
        Timeline.of(table, first.kind(), gaps, problems, line -> rows.at(line, header.time()));
    if (steps.length() > MOST_STEPS) {
      problems.add(Kind.TOO_LARGE, steps.length() + " steps", "at most " + MOST_STEPS + " steps");
    }
    if (!problems.isEmpty()) {
      return unreadable();
    }
    return profile(header, table, steps, first.secondOfDay());
  }

  private ProfileReading unreadable() {
    return new ProfileReading.Unreadable(source.name(), problems.listed());
  }

  private void row(DayHeader header, Rows.Row row, DayTable table) {
    if (isWellFormed(header, row)) {
      Stamp stamp = stamp(header, row);
      double[] values = values(header, row);
      if (stamp != null) {
        table.add(row.line(), stamp.instant_s(), values);
      }
    }
  }

  private boolean isWellFormed(DayHeader header, Rows.Row row) {
    if (row.isTorn()) {
      problems.add(
          Kind.QUOTE_NOT_CLOSED,
          source.excerpt(rows.at(row.line())),
          "a second quote on the same line, or none",
          rows.at(row.line()));
      return false;
    }
    int cells = row.cells().size();
    boolean more = row.cells().stream().skip(header.width()).anyMatch(cell -> !cell.isEmpty());
    if (more || cells < header.width()) {
      problems.add(
          Kind.NOT_FITTING,
          cells + " cells",
          header.width() + ", as in the header" + (more ? commaHint() : ""),
          rows.at(row.line()));
      return false;
    }
    return true;
  }

  private String commaHint() {
    return rows.partedByComma()
        ? "; decimals with a point, or columns separated by semicolons"
        : "";
  }

  private @Nullable Stamp stamp(DayHeader header, Rows.Row row) {
    String cell = row.cells().get(header.time());
    Stamp stamp = Stamp.of(cell);
    if (stamp == null) {
      problems.addCell(
          Kind.NOT_A_TIME,
          cell,
          "HH:MM, HH:MM:SS, 2026-04-21T07:00 or 2026-04-21T07:00+02:00",
          rows.at(row.line(), header.time()));
      return null;
    }
    if (first == null) {
      first = stamp;
      firstLine = row.line();
    }
    return stamp.kind() == first.kind() ? stamp : otherKind(header, row, stamp, first);
  }

  private @Nullable Stamp otherKind(DayHeader header, Rows.Row row, Stamp stamp, Stamp first) {
    problems.add(
        Kind.NOT_FITTING,
        stamp.kind().words(),
        first.kind().words() + ", as in line " + firstLine,
        rows.at(row.line(), header.time()));
    return null;
  }

  private double[] values(DayHeader header, Rows.Row row) {
    double[] values = new double[header.measured().size()];
    for (int column = 0; column < values.length; column++) {
      Measured measured = header.measured().get(column);
      String cell = row.cells().get(measured.index());
      values[column] = decimals.value(cell, row.line(), measured.index()) * measured.factor();
      if (!isOrdinary(measured, values[column])) {
        problem(measured, row, cell, values[column]);
      }
    }
    return values;
  }

  private static boolean isOrdinary(Measured measured, double value) {
    double least = measured.isNeverNegative() ? 0 : -MOST_KW;
    double most = measured.isPower() ? MOST_KW : Double.MAX_VALUE;
    return value >= least && value <= most;
  }

  private void problem(Measured measured, Rows.Row row, String cell, double value) {
    Span there = rows.at(row.line(), measured.index());
    if (Double.isNaN(value)) {
      notANumber(cell, there);
    } else if (Double.isInfinite(value)) {
      problems.addCell(Kind.NOT_FINITE, cell, "a number such as 3.5", there);
    } else if (value < 0 && measured.isNeverNegative()) {
      problems.addCell(Kind.OUT_OF_RANGE, cell, measured.least(), there);
    } else if (doubted.add(measured.column())) {
      problems.addCell(Kind.UNIT_DOUBTED, cell, measured.most(), there);
    }
  }

  private void notANumber(String cell, Span there) {
    if (!cell.isEmpty()) {
      SyntaxError error = decimals.error(cell);
      problems.addCell(error.kind(), cell, error.right(), there);
    } else if (gaps.refuses()) {
      problems.add(
          Kind.VALUE_MISSING, "nothing", "a number, 0 for none; or use --fill-gaps 5", there);
    }
  }

  private void doubtedDecimals() {
    Decimals.@Nullable Place comma = decimals.doubtfulComma();
    if (comma == null) {
      return;
    }
    Decimals.@Nullable Place point = decimals.point();
    Span there = rows.at(comma.line(), comma.index());
    problems.add(
        Kind.DIGITS_GROUPED,
        source.excerpt(there),
        point == null
            ? "a decimal point: these commas may mark thousands or decimals"
            : "decimals with a point or with a comma throughout; line "
                + point.line()
                + " has a point",
        there);
  }

  private ProfileReading profile(
      DayHeader header, DayTable table, Timeline.Steps steps, int start_s) {
    StepLength step = new StepLength(steps.step_s());
    Filled filled = new Filled(table, steps, gaps);
    Map<Column, double[]> values = new EnumMap<>(Column.class);
    for (int index = 0; index < header.measured().size(); index++) {
      Measured measured = header.measured().get(index);
      values.put(measured.column(), column(measured, index, table, filled));
    }
    doubtedDraw(header, table, step);
    return problems.isEmpty()
        ? new ProfileReading.Read(
            source.name(),
            profile(step, start_s, steps.length(), values),
            values.keySet(),
            filled.count())
        : unreadable();
  }

  private double[] column(Measured measured, int index, DayTable table, Filled filled) {
    return measured.isPower()
        ? filled.held(
            index, row -> unfillable(row == 0, rows.at(table.line(row), measured.index())))
        : filled.undrawn(index);
  }

  private void unfillable(boolean first, Span there) {
    problems.add(
        Kind.VALUE_MISSING,
        first ? "nothing" : "more than " + gaps.longest_min() + " min of nothing",
        first ? "a number to begin with" : "a gap of at most " + gaps.longest_min() + " min",
        there);
  }

  /** Asks about the first draw-off that no house's pipes could pass. */
  private void doubtedDraw(DayHeader header, DayTable table, StepLength step) {
    for (int index = 0; index < header.measured().size(); index++) {
      Measured measured = header.measured().get(index);
      double most_L = measured.isPower() ? Double.MAX_VALUE : MOST_L_PER_MIN * step.minutes();
      for (int row = 0; row < table.rows(); row++) {
        if (table.value(index, row) > most_L) {
          Span there = rows.at(table.line(row), measured.index());
          problems.add(
              Kind.UNIT_DOUBTED,
              source.excerpt(there),
              "litres drawn off in the step, not litres an hour: at most 100 L a minute",
              there);
          return;
        }
      }
    }
  }

  private static Profile profile(
      StepLength step, int start_s, int length, Map<Column, double[]> values) {
    double[] none = new double[length];
    double[] draw_L = values.getOrDefault(Column.DRAW, none);
    double[] surplus_kW = values.get(Column.SURPLUS);
    return surplus_kW == null
        ? Profile.of(
            step,
            start_s,
            values.getOrDefault(Column.PV, none),
            values.getOrDefault(Column.HOUSE, none),
            draw_L)
        : Profile.ofSurplus(step, start_s, surplus_kW, draw_L);
  }
}
