package deadband.diagnosis;

import deadband.meterlog.Column;
import deadband.meterlog.Meaning;
import deadband.meterlog.MeterLog;
import java.util.Arrays;
import java.util.Optional;

/** The surplus before heat pump, immersion heater, battery and vehicle, as a log shows it. */
public final class Surplus {

  private Surplus() {}

  /**
   * Export less import, with what the flexible loads take added back [kW]; empty where the grid's
   * power is not in the log.
   */
  public static Optional<double[]> of(MeterLog log, Cycles cycles) {
    Optional<Column> grid = log.column(Meaning.GRID);
    if (grid.isEmpty()) {
      return Optional.empty();
    }
    double[] surplus_kW = grid.get().values();
    Arrays.setAll(surplus_kW, row -> -surplus_kW[row]);
    Optional<Column> own = log.column(Meaning.HEAT_PUMP);
    if (own.isPresent()) {
      add(surplus_kW, own.get(), 1);
    } else {
      for (Cycle cycle : cycles.list()) {
        for (int row = cycle.first(); row <= cycle.last(); row++) {
          surplus_kW[row] += cycle.power_kW();
        }
      }
    }
    log.column(Meaning.IMMERSION).ifPresent(column -> add(surplus_kW, column, 1));
    log.column(Meaning.VEHICLE).ifPresent(column -> add(surplus_kW, column, 1));
    log.column(Meaning.BATTERY).ifPresent(column -> add(surplus_kW, column, -1));
    return Optional.of(surplus_kW);
  }

  private static void add(double[] values, Column column, int sign) {
    Arrays.setAll(
        values,
        row -> {
          double other = column.value(row);
          return Double.isNaN(other) ? values[row] : values[row] + sign * other;
        });
  }
}
