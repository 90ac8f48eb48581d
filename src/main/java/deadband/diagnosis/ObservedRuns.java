package deadband.diagnosis;

import deadband.meterlog.Column;
import deadband.meterlog.Meaning;
import deadband.meterlog.MeterLog;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/** What the runs of a log come to: their number, length, time of day, surplus and tank. */
final class ObservedRuns {

  private static final double DAY_FROM_H = 8;
  private static final double DAY_UNTIL_H = 18;

  /** A pause longer than this ends a bout of short-cycling [min]. */
  private static final double LONG_PAUSE_MIN = 90;

  private final MeterLog log;
  private final Cycles cycles;
  private final AsSet set;
  private final RunReader runs;
  private final LogRows rows;

  ObservedRuns(MeterLog log, Cycles cycles, AsSet set, RunReader runs) {
    this.log = log;
    this.cycles = cycles;
    this.set = set;
    this.runs = runs;
    this.rows = new LogRows(log);
  }

  Observation observation() {
    Observation seen = new Observation();
    double days = Math.max(0.5, log.covered_h() / 24);
    seen.with(Feature.STARTS, cycles.startsInWorstHour(), 0.1);
    seen.with(Feature.STARTS_DAY, cycles.count() / days, 0.15);
    if (runs.whole().isEmpty()) {
      return seen;
    }
    if (days >= 0.9) {
      share(seen, Feature.BY_DAY, runs.whole(), cycle -> isByDay(log.hour(cycle.first())));
    }
    for (Cycle cycle : runs.whole()) {
      count(seen, runs.trigger(cycle));
    }
    double shared_C = runs.sharedStop_C();
    runs.whole().forEach(cycle -> count(seen, runs.ending(cycle, shared_C)));
    runs(seen);
    surplus(seen);
    tank(seen);
    log.column(Meaning.BATTERY)
        .ifPresent(
            battery -> seen.with(Feature.BATTERY, fed(), 0.2 / Math.sqrt(runs.whole().size())));
    log.column(Meaning.HEAT_PUMP).ifPresent(own -> standby(seen, own));
    return seen;
  }

  /** What readings show that are too far apart for single runs. */
  Observation coarseObservation() {
    Observation seen = new Observation();
    if (!runs.whole().isEmpty()) {
      rise(seen);
      log.column(Meaning.BATTERY)
          .ifPresent(
              battery -> seen.with(Feature.BATTERY, fed(), 0.2 / Math.sqrt(runs.whole().size())));
    }
    return seen;
  }

  private static void count(Observation seen, Trigger trigger) {
    if (trigger != Trigger.NOT_SHOWN) {
      seen.with(trigger, 1);
    }
  }

  private static void count(Observation seen, Ending ending) {
    if (ending != Ending.NOT_SHOWN) {
      seen.with(ending, 1);
    }
  }

  private void runs(Observation seen) {
    timed(
        seen,
        Feature.RUN,
        LogRows.median(runs.whole().stream().mapToDouble(Cycle::run_min).toArray()));
    double[] pauses =
        runs.whole().stream()
            .mapToDouble(runs::pauseAfter_min)
            .filter(pause -> pause < LONG_PAUSE_MIN)
            .toArray();
    if (pauses.length >= 2) {
      timed(seen, Feature.PAUSE, LogRows.median(pauses));
    }
  }

  private void timed(Observation seen, Feature feature, double value_min) {
    seen.with(feature, value_min, feature.scaledError(value_min, 0.3 * log.interval_s() / 60));
  }

  private static void share(
      Observation seen, Feature feature, List<Cycle> of, Predicate<Cycle> holds) {
    if (!of.isEmpty()) {
      double share = of.stream().filter(holds).count() / (double) of.size();
      seen.withShare(feature, share, of.size());
    }
  }

  private static boolean isByDay(double hour) {
    return hour >= DAY_FROM_H && hour < DAY_UNTIL_H;
  }

  /** Surplus on which the relay decided a start: that of its delay, before the lag. */
  private double atStart_kW(Cycle cycle) {
    double lag_min = set.orZero(set.startLag_min());
    double delay_min = Math.max(1, set.orZero(set.startDelay_min()));
    return LogRows.mean(
        runs.surplus_kW(),
        rows.row(cycle.start_s() - 60 * (lag_min + delay_min)),
        Math.max(rows.row(cycle.start_s() - 60 * lag_min), cycle.first() - 1) + 1);
  }

  private static boolean isByRelay(Trigger trigger) {
    return trigger == Trigger.RELAY || trigger == Trigger.BELOW_START;
  }

  private void surplus(Observation seen) {
    if (runs.surplus_kW().length == 0 || Double.isNaN(set.closes_kW())) {
      return;
    }
    double[] deficits =
        runs.whole().stream()
            .filter(cycle -> isByRelay(runs.trigger(cycle)) && isPrompt(cycle))
            .mapToDouble(this::deficit)
            .toArray();
    if (deficits.length > 0) {
      double mean = Arrays.stream(deficits).average().orElse(Double.NaN);
      seen.with(Feature.DEFICIT, mean, 0.02 + 0.25 / deficits.length);
    }
  }

  /** Whether a start follows the closing of the relay, and did not wait for the tank to cool. */
  private boolean isPrompt(Cycle cycle) {
    double wait_min = set.orZero(set.startLag_min()) + set.orZero(set.minimumOff_min()) + 8;
    int from = Math.max(0, rows.row(cycle.start_s() - 60 * wait_min));
    return !runs.isClosed(from);
  }

  private double deficit(Cycle cycle) {
    double share = (cycle.power_kW() - atStart_kW(cycle)) / cycle.power_kW();
    return Math.max(0, Math.min(1, share));
  }

  private void tank(Observation seen) {
    if (runs.tank_C().length == 0) {
      return;
    }
    rise(seen);
    double[] all =
        runs.whole().stream()
            .mapToDouble(c -> Math.abs(runs.stopTank_C(c) - runs.startTank_C(c)))
            .toArray();
    seen.with(Feature.DIFFERENTIAL, LogRows.median(all), 0.3 / Math.sqrt(all.length));
  }

  private void rise(Observation seen) {
    if (runs.tank_C().length == 0) {
      return;
    }
    double rise_K = 0;
    double hours = 0;
    for (Cycle cycle : runs.whole()) {
      double rise = runs.stopTank_C(cycle) - runs.startTank_C(cycle);
      if (Double.isFinite(rise)) {
        rise_K += rise;
        hours += cycle.run_min() / 60;
      }
    }
    double mean = Math.max(0, rise_K / hours);
    seen.with(Feature.RISE, mean, Feature.RISE.scaledError(mean, 0.5 / hours));
  }

  /** The part of the heat pump's energy, while there is no surplus, that is not imported. */
  private double fed() {
    double[] grid_kW = log.column(Meaning.GRID).map(Column::values).orElse(new double[0]);
    double given = 0;
    double taken = 0;
    for (Cycle cycle : runs.whole()) {
      for (int row = cycle.first(); row <= cycle.last() && grid_kW.length > 0; row++) {
        if (runs.surplus_kW().length > 0
            && runs.surplus_kW()[row] < 0
            && Double.isFinite(grid_kW[row])) {
          given += Math.max(0, cycle.power_kW() - Math.max(0, grid_kW[row]));
          taken += cycle.power_kW();
        }
      }
    }
    return taken > 0 ? given / taken : Double.NaN;
  }

  /** Share of pauses in which even the standby power is gone; nothing where there is none. */
  private void standby(Observation seen, Column own) {
    double most_kW = cycles.standby_kW() + 0.1 * (cycles.running_kW() - cycles.standby_kW());
    double[] quiet = Arrays.stream(own.values()).filter(kW -> kW > 0.002 && kW < most_kW).toArray();
    if (quiet.length < 0.02 * log.rows() || LogRows.median(quiet) < 0.004) {
      return;
    }
    int gone = 0;
    int pauses = 0;
    for (int index = 1; index < cycles.count(); index++) {
      int from = cycles.list().get(index - 1).last() + 2;
      int until = cycles.list().get(index).first() - 1;
      if (from < until) {
        pauses++;
        gone += LogRows.at(LogRows.within(own.values(), from, until), 0.2) < 0.002 ? 1 : 0;
      }
    }
    if (pauses >= 2) {
      seen.withShare(Feature.STANDBY_LOST, gone / (double) pauses, pauses);
    }
  }
}
