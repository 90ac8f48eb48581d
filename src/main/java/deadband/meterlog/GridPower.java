package deadband.meterlog;

import deadband.meterlog.Column.Form;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The grid's power, import positive: its sign as said in the header or found out, or what import
 * and export come to.
 */
record GridPower(MeterLog.Times times, List<Column> all) {

  /** A power below this is none [kW]. */
  private static final double ZERO_KW = 0.02;

  /** A step of the heat pump's power that shows in the grid's [kW]. */
  private static final double STEP_KW = 0.3;

  /** What a home without a battery does not export at night [kW]. */
  private static final double NIGHT_KW = 0.05;

  List<Column> columns() {
    return netted(all.stream().map(this::signed).toList());
  }

  /** With the grid's power, where import and export are there without it. */
  static List<Column> netted(List<Column> columns) {
    Column in = find(columns, Meaning.IMPORT);
    Column out = find(columns, Meaning.EXPORT);
    if (find(columns, Meaning.GRID) != null || in == null || out == null) {
      return columns;
    }
    List<Column> all = new ArrayList<>(columns);
    all.add(net(in, out));
    return all;
  }

  private static @Nullable Column find(List<Column> columns, Meaning meaning) {
    return columns.stream().filter(c -> c.meaning() == meaning).findFirst().orElse(null);
  }

  private static Column net(Column in, Column out) {
    double[] net = in.values();
    Arrays.setAll(net, row -> net[row] - out.value(row));
    return new Column(
        new Heading("grid", Meaning.GRID, LogUnit.KW, ""),
        Form.DERIVED,
        "import less export",
        in.resolution(),
        net);
  }

  private Column signed(Column column) {
    boolean negative = Arrays.stream(column.values()).anyMatch(value -> value < -ZERO_KW);
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
    Column pump = find(all, Meaning.HEAT_PUMP);
    double falls = pv == null ? 0 : -bySun(grid, pv);
    double rises = pump == null ? 0 : byHeatPump(grid, pump);
    boolean in = falls != 0 ? falls > 0 : rises >= 0;
    if (!negative && Arrays.stream(grid.values()).anyMatch(value -> value < ZERO_KW)) {
      return new Column(
          grid.heading().as(in ? Meaning.IMPORT : Meaning.EXPORT, grid.heading().because()),
          grid.form(),
          "no negative values: taken as " + (in ? "import" : "export") + " alone",
          grid.resolution(),
          grid.values());
    }
    if (falls != 0 || rises != 0) {
      String by = falls != 0 ? "the PV power" : "the heat pump's power";
      return with(grid, in ? 1 : -1, sign(in) + ", since it follows " + by);
    }
    return negative ? byHours(grid) : with(grid, 1, "no negative values: taken as import");
  }

  private Column byHours(Column grid) {
    double day = mean(grid, 10, 15);
    double early = mean(grid, 0, 4);
    double late = mean(grid, 22, 24);
    double night = Double.isNaN(early) ? late : Double.isNaN(late) ? early : Math.max(early, late);
    if (night < -NIGHT_KW && Double.isNaN(day) && find(all, Meaning.BATTERY) == null) {
      return with(grid, -1, sign(false) + ", since at night nothing is exported");
    }
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

  /** What the grid does, all in all, at the steps of the heat pump's power; 0 without any. */
  private static double byHeatPump(Column grid, Column pump) {
    double sum = 0;
    for (int row = 1; row < grid.rows(); row++) {
      double step_kW = pump.value(row) - pump.value(row - 1);
      double change_kW = grid.value(row) - grid.value(row - 1);
      if (Math.abs(step_kW) >= STEP_KW && Double.isFinite(change_kW)) {
        sum += Math.signum(step_kW) * change_kW / Math.abs(step_kW);
      }
    }
    return Math.abs(sum) < 1 ? 0 : sum;
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
