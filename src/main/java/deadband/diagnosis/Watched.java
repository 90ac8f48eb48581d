package deadband.diagnosis;

import deadband.meterlog.Column;
import deadband.meterlog.Meaning;
import deadband.meterlog.MeterLog;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A log in equal steps of half a minute or of its own interval, whichever is longer: what the
 * meters show in each, and when the heat pump runs. A value that is missing is NaN.
 */
final class Watched {

  /** Finer than this shows nothing more of relay and compressor, whose times are minutes [s]. */
  private static final int FINEST_S = 30;

  private final MeterLog log;
  private final int step_s;
  private final int steps;
  private final double[] export_kW;
  private final double[] pump_kW;
  private final double[] heater_kW;
  private final double[] vehicle_kW;
  private final double[] discharge_kW;
  private final double[] pv_kW;
  private final double[] tank_C;
  private final double[] hour;
  private final List<Cycle> runs;

  private Watched(MeterLog log, Cycles cycles) {
    this.log = log;
    this.step_s =
        log.interval_s() <= 120 ? FINEST_S : log.interval_s() <= 300 ? 60 : log.interval_s();
    long span_s = log.end_s(log.rows() - 1) - log.at_s(0);
    this.steps = (int) Math.max(1, span_s / step_s);
    this.runs = cycles.list();
    this.export_kW = read(Meaning.GRID, Double.NaN);
    Arrays.setAll(export_kW, step -> -export_kW[step]);
    this.pump_kW = log.has(Meaning.HEAT_PUMP) ? read(Meaning.HEAT_PUMP, 0) : ofRuns();
    this.heater_kW = read(Meaning.IMMERSION, 0);
    this.vehicle_kW = read(Meaning.VEHICLE, 0);
    this.discharge_kW = read(Meaning.BATTERY, 0);
    this.pv_kW = read(Meaning.PV, Double.NaN);
    this.tank_C = read(Meaning.TANK, Double.NaN);
    this.hour = new double[steps];
    double first_h = log.hour(0);
    Arrays.setAll(hour, step -> (first_h + step * step_s / 3600.0) % 24);
  }

  static Watched of(MeterLog log, Cycles cycles) {
    return new Watched(log, cycles);
  }

  /** Means of a column over the steps. */
  private double[] read(Meaning meaning, double absent) {
    double[] sums = new double[steps];
    Optional<Column> column = log.column(meaning);
    if (column.isEmpty()) {
      Arrays.fill(sums, absent);
      return sums;
    }
    double[] held_s = new double[steps];
    for (int row = 0; row < log.rows(); row++) {
      double value = column.get().value(row);
      if (Double.isFinite(value)) {
        spread(row, value, sums, held_s);
      }
    }
    Arrays.setAll(sums, step -> held_s[step] > 0 ? sums[step] / held_s[step] : Double.NaN);
    return sums;
  }

  private void spread(int row, double value, double[] sums, double[] held_s) {
    long from_s = log.at_s(row) - log.at_s(0);
    long until_s = log.end_s(row) - log.at_s(0);
    for (int step = (int) (from_s / step_s);
        step < steps && (long) step * step_s < until_s;
        step++) {
      long part_s =
          Math.min(until_s, (step + 1L) * step_s) - Math.max(from_s, (long) step * step_s);
      sums[step] += value * part_s;
      held_s[step] += part_s;
    }
  }

  private double[] ofRuns() {
    double[] power_kW = new double[steps];
    for (Cycle run : runs) {
      Arrays.fill(power_kW, step(run.start_s()), step(run.end_s()), run.power_kW());
    }
    return power_kW;
  }

  /** The step whose beginning is nearest to an instant. */
  int step(double instant_s) {
    return (int) Math.max(0, Math.min(steps - 1.0, Math.rint((instant_s - log.at_s(0)) / step_s)));
  }

  int steps() {
    return steps;
  }

  double interval_min() {
    return log.interval_s() / 60.0;
  }

  double step_min() {
    return step_s / 60.0;
  }

  int steps(double minutes) {
    return (int) Math.round(60 * minutes / step_s);
  }

  List<Cycle> runs() {
    return runs;
  }

  boolean hasSurplus() {
    return log.has(Meaning.GRID);
  }

  boolean hasTank() {
    return log.has(Meaning.TANK);
  }

  /** Whether a step has readings. */
  boolean isKnown(int step) {
    return Double.isFinite(pump_kW[step]) && (!hasSurplus() || Double.isFinite(export_kW[step]));
  }

  double export_kW(int step) {
    return export_kW[step];
  }

  double pump_kW(int step) {
    return pump_kW[step];
  }

  double heater_kW(int step) {
    return orZero(heater_kW[step]);
  }

  double vehicle_kW(int step) {
    return orZero(vehicle_kW[step]);
  }

  /** What the battery gives; negative while it is charged. */
  double discharge_kW(int step) {
    return orZero(discharge_kW[step]);
  }

  double pv_kW(int step) {
    return pv_kW[step];
  }

  /** Surplus before heat pump, heater, vehicle and battery. */
  double before_kW(int step) {
    return export_kW[step]
        + pump_kW[step]
        + heater_kW(step)
        + vehicle_kW(step)
        - discharge_kW(step);
  }

  double tank_C(int step) {
    return tank_C[step];
  }

  /** Local time of a step, such as {@code 2026-06-02 10:14}. */
  String clock(int step) {
    return log.clock(0, log.at_s(0) + (long) step * step_s)
        .truncatedTo(ChronoUnit.MINUTES)
        .toString()
        .replace('T', ' ');
  }

  double hour(int step) {
    return hour[step];
  }

  private static double orZero(double value) {
    return Double.isFinite(value) ? value : 0;
  }
}
