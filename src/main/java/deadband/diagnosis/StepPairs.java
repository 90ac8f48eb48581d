package deadband.diagnosis;

import deadband.meterlog.Column;
import deadband.meterlog.Meaning;
import deadband.meterlog.MeterLog;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Runs of the heat pump from steps of the house's power: a step up near its input, and the next
 * step down of the same size. What PV, immersion heater, battery and vehicle take or give is
 * explained first, where it is measured.
 */
final class StepPairs {

  private static final int COARSEST_S = 300;

  /** Share of the input by which a step may be off: the input rises with the tank. */
  private static final double OFF = 0.3;

  /** Standard deviation of a step that is the heat pump's, as a share of its input. */
  private static final double SPREAD = 0.12;

  /** Longer than this is no run for hot water [s]. */
  private static final double LONGEST_S = 6 * 3600.0;

  private final MeterLog log;
  private final double input_kW;
  private final double[] house_kW;
  private final int beside;

  private StepPairs(MeterLog log, double input_kW, double[] house_kW) {
    this.log = log;
    this.input_kW = input_kW;
    this.house_kW = house_kW;
    this.beside = Math.max(1, Math.min(30, 90 / log.interval_s()));
  }

  static Cycles find(MeterLog log, OptionalDouble input_kW) {
    Optional<double[]> house = house(log);
    if (house.isEmpty()) {
      return Cycles.none("neither the heat pump's power nor the house's is in the log");
    }
    if (input_kW.isEmpty()) {
      return Cycles.none(
          "the heat pump is not metered by itself, and its power input is not entered"
              + " (heatPump.hotWaterInput_kW)");
    }
    if (log.interval_s() > COARSEST_S) {
      return Cycles.none(
          "the heat pump is not metered by itself, and the readings are too far apart to show its"
              + " steps in the house's power");
    }
    return new StepPairs(log, input_kW.getAsDouble(), house.get()).cycles();
  }

  /** What the house takes, with what is measured apart taken off [kW]. */
  private static Optional<double[]> house(MeterLog log) {
    Optional<Column> whole = log.column(Meaning.HOUSE);
    Optional<Column> grid = log.column(Meaning.GRID).or(() -> log.column(Meaning.IMPORT));
    if (whole.isEmpty() && grid.isEmpty()) {
      return Optional.empty();
    }
    double[] house = whole.or(() -> grid).get().values();
    if (whole.isEmpty()) {
      log.column(Meaning.PV).ifPresent(pv -> add(house, pv, 1));
    }
    for (Meaning apart : List.of(Meaning.IMMERSION, Meaning.VEHICLE)) {
      log.column(apart).ifPresent(column -> add(house, column, -1));
    }
    return Optional.of(house);
  }

  private static void add(double[] house, Column column, int sign) {
    Arrays.setAll(house, row -> house[row] + sign * column.value(row));
  }

  private Cycles cycles() {
    List<Cycle> found = new ArrayList<>();
    int up = -1;
    double size_kW = 0;
    for (int row = beside; row + beside <= house_kW.length; row++) {
      double step_kW = step(row);
      if (Math.abs(step_kW) < (1 - OFF) * input_kW || !isSteepest(row, step_kW)) {
        continue;
      }
      if (step_kW > 0 && step_kW < (1 + OFF) * input_kW) {
        up = row;
        size_kW = step_kW;
      } else if (step_kW < 0 && up >= 0 && Math.abs(step_kW + size_kW) < OFF * input_kW) {
        if (log.at_s(row) - log.at_s(up) < LONGEST_S) {
          found.add(cycle(up, row, size_kW, -step_kW));
        }
        up = -1;
      }
    }
    String apart = log.has(Meaning.PV) || log.has(Meaning.HOUSE) ? "" : ", PV not taken off";
    return new Cycles(
        found, "steps of the house's power near the input entered" + apart, 0, input_kW);
  }

  private Cycle cycle(int up, int down, double size_kW, double fall_kW) {
    double hours = (log.at_s(down) - log.at_s(up)) / 3600.0;
    double mean_kW = (size_kW + fall_kW) / 2;
    double off = (mean_kW / input_kW - 1) / SPREAD;
    double pair = (size_kW - fall_kW) / (SPREAD * input_kW);
    return new Cycle(
        up,
        down - 1,
        log.at_s(up),
        log.at_s(down),
        hours,
        hours * mean_kW,
        mean_kW,
        false,
        0.9 * Math.exp(-0.25 * off * off - 0.25 * pair * pair));
  }

  /** Mean after a row less the mean before it [kW]. */
  private double step(int row) {
    return mean(row, row + beside) - mean(row - beside, row);
  }

  private boolean isSteepest(int row, double step_kW) {
    for (int near = Math.max(beside, row - beside);
        near <= Math.min(house_kW.length - beside, row + beside);
        near++) {
      double other_kW = near == row ? 0 : Math.copySign(1, step_kW) * step(near);
      if (other_kW > Math.abs(step_kW) || (other_kW == Math.abs(step_kW) && near < row)) {
        return false;
      }
    }
    return true;
  }

  private double mean(int from, int until) {
    double sum = 0;
    for (int row = from; row < until; row++) {
      sum += house_kW[row];
    }
    return sum / (until - from);
  }
}
