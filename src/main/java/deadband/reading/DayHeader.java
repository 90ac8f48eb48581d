package deadband.reading;

import deadband.dayrun.Recording;
import deadband.dayrun.Recording.Quantity;
import deadband.document.NearestName;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.reading.ProfileReading.Column;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Which column of a day file stands where.
 *
 * @param line where the header stands
 * @param width cells it has
 * @param time index of the times, -1 where there are none
 * @param measured what the other columns give
 */
record DayHeader(int line, int width, int time, List<Measured> measured) {

  private static final String TIME = "time";
  private static final double WATTS = 0.001;

  /** What a recorded run shows besides: passed over, so that it can be run again. */
  private static final Set<String> OF_A_TRACE = Set.copyOf(Recording.headers());

  private static final List<String> LOADS =
      Stream.of(Quantity.HEAT_PUMP, Quantity.IMMERSION, Quantity.BACKUP, Quantity.CHARGER)
          .map(Quantity::header)
          .toList();

  /** Every name a column may have, with what it tells. */
  private static final Map<String, Measured> NAMES = names();

  /**
   * A column of values.
   *
   * @param index of its cells
   * @param factor from its unit to that of the {@link Column}
   */
  record Measured(Column column, String name, int index, double factor) {
    private Measured at(int index) {
      return new Measured(column, name, index, factor);
    }

    boolean isPower() {
      return column != Column.DRAW;
    }

    boolean isNeverNegative() {
      return column == Column.PV || column == Column.DRAW;
    }

    /** What to write in place of a value below zero. */
    String least() {
      return isPower()
          ? "0 or more; the power input of an inverter at night is house load"
          : "0 or more";
    }

    /** What to write in place of a power that no home has. */
    String most() {
      String most = "at most 100 kW either way, as in a home";
      return factor == 1
          ? most + "; where these are watts, the column's name is " + name.replace("_kW", "_W")
          : most;
    }
  }

  private static Map<String, Measured> names() {
    Map<String, Measured> names = new LinkedHashMap<>();
    for (Column column : Column.values()) {
      String header = column.header();
      names.put(header, new Measured(column, header, 0, 1));
      if (header.endsWith("_kW")) {
        String watts = header.replace("_kW", "_W");
        names.put(watts, new Measured(column, watts, 0, WATTS));
      }
    }
    return names;
  }

  /** What a day file tells. */
  Set<Column> columns() {
    Set<Column> columns = EnumSet.noneOf(Column.class);
    measured.forEach(each -> columns.add(each.column()));
    return columns;
  }

  /** Reads the first row, and adds what is wrong with it. */
  static DayHeader of(Source source, Rows rows, Rows.Row row, Problems problems) {
    return new Reader(source, rows, row, problems).read();
  }

  /** Goes over the first row. */
  private static final class Reader {
    private final Source source;
    private final Rows rows;
    private final Rows.Row row;
    private final Problems problems;
    private final Map<Column, Measured> measured = new LinkedHashMap<>();
    private int time = -1;

    Reader(Source source, Rows rows, Rows.Row row, Problems problems) {
      this.source = source;
      this.rows = rows;
      this.row = row;
      this.problems = problems;
    }

    DayHeader read() {
      for (int index = 0; index < row.cells().size(); index++) {
        cell(row.cells().get(index), index);
      }
      if (problems.isEmpty()) {
        missing();
        surplusBesideItsParts();
        besideLoads();
      }
      return new DayHeader(row.line(), row.cells().size(), time, List.copyOf(measured.values()));
    }

    private void cell(String name, int index) {
      Measured known = NAMES.get(name);
      if (name.equals(TIME)) {
        twice(time, name, index);
        time = index;
      } else if (known != null) {
        Measured earlier = measured.put(known.column(), known.at(index));
        twice(earlier == null ? -1 : earlier.index(), name, index);
      } else if (!name.isEmpty() && !OF_A_TRACE.contains(name)) {
        unknown(name, index);
      }
    }

    private void twice(int earlier, String name, int index) {
      if (earlier >= 0) {
        problems.add(
            problem(Kind.NAME_TWICE, name, "one column of each quantity", index)
                .earlier(rows.at(row.line(), earlier)));
      }
    }

    private void unknown(String name, int index) {
      List<String> known = new ArrayList<>(NAMES.keySet());
      known.add(0, TIME);
      problems.add(
          problem(Kind.UNKNOWN_NAME, name, "any of " + String.join(", ", known), index)
              .near(NearestName.of(name, known)));
    }

    private void missing() {
      if (time < 0) {
        problems.addCell(
            Kind.MISSING,
            String.join(", ", row.cells()),
            "a column named time, in which each row's step begins",
            rows.at(row.line()));
      }
      if (measured.isEmpty()) {
        problems.addCell(
            Kind.MISSING,
            String.join(", ", row.cells()),
            "beside time at least one of " + String.join(", ", NAMES.keySet()),
            rows.at(row.line()));
      }
    }

    /** Surplus is sun less house: with it, either of them would be entered twice. */
    private void surplusBesideItsParts() {
      @Nullable Measured surplus = measured.get(Column.SURPLUS);
      if (surplus == null) {
        return;
      }
      for (Column part : List.of(Column.PV, Column.HOUSE)) {
        @Nullable Measured beside = measured.get(part);
        if (beside != null) {
          problems.add(
              problem(
                      Kind.NOT_FITTING,
                      beside.name() + " beside " + surplus.name(),
                      "the surplus alone, or PV and house load without it",
                      beside.index())
                  .earlier(rows.at(row.line(), surplus.index())));
        }
      }
    }

    /** What the simulation adds itself may be in a surplus or a house that is logged beside it. */
    private void besideLoads() {
      List<String> names = row.cells();
      if (names.containsAll(OF_A_TRACE)) {
        return;
      }
      for (String load : LOADS) {
        int index = names.indexOf(load);
        if (index >= 0) {
          problems.add(
              problem(
                  Kind.NOT_FITTING,
                  load + " beside what a day file holds",
                  "surplus_kW, or pv_kW and house_kW, logged without it, and no column for it; or"
                      + " grid_kW beside it: then it is taken out",
                  index));
        }
      }
    }

    private Problem problem(Kind kind, String found, String right, int index) {
      return Problem.of(source, kind, Source.shortened(found), right)
          .at(rows.at(row.line(), index));
    }
  }
}
