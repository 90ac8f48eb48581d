package deadband.diagnosis;

import deadband.setup.Relay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The runs that would come of a relay and heat pump that act so, over the surplus and the draw-off
 * of a log: what a cause predicts, to be held beside what is observed. What comes by chance (a
 * contact that bounces, another controller) comes at its mean time.
 */
final class FreeRun {

  private static final double RUN_SPREAD = 0.4;
  private static final double DAY_SPREAD = 0.2;

  /** Heat lost in standby, where no tank temperature shows it [K/h]. */
  private static final double FALL_K_PER_H = 0.8;

  /** A log without a temperature, or with its changes alone, has none above this. */
  private static final double COLDEST_C = 5;

  /** A start this soon after the relay closed did not wait for the tank to cool. */
  private static final double PROMPT_MIN = 8;

  private static final double LONG_AGO_MIN = 600;
  private static final double BELOW_LIMIT_K = 0.4;
  private static final double NIGHT_UNTIL_H = 6.5;

  private final Watched log;
  private final Behaviour b;
  private final List<Double> runs_min = new ArrayList<>();
  private final List<Double> pauses_min = new ArrayList<>();
  private final List<Double> deficits = new ArrayList<>();
  private final List<Integer> starts = new ArrayList<>();

  // now
  private boolean runs;
  private boolean closed;
  private boolean everyday;
  private boolean called;
  private double above_min;
  private double below_min;
  private double closedFor_min;
  private double called_min;
  private double in_min = LONG_AGO_MIN;
  private double tank_C;

  private FreeRun(Watched log, Behaviour b) {
    this.log = log;
    this.b = b;
  }

  /** Period, run, pause, when, import. */
  static Prediction predicted(Watched log, Behaviour b) {
    FreeRun run = new FreeRun(log, b);
    run.go();
    return run.prediction();
  }

  private Prediction prediction() {
    double days = Math.max(0.5, log.steps() * log.step_min() / 1440);
    Prediction prediction = new Prediction();
    prediction.with(Feature.RUN, median(runs_min), Math.hypot(RUN_SPREAD, unevenness(runs_min)));
    prediction.with(Feature.PAUSE, median(pauses_min), RUN_SPREAD);
    prediction.with(Feature.STARTS, startsInWorstHour(), RUN_SPREAD);
    prediction.with(Feature.STARTS_DAY, starts.size() / days, RUN_SPREAD);
    long byDay = starts.stream().filter(step -> log.hour(step) >= 8 && log.hour(step) < 18).count();
    prediction.with(Feature.BY_DAY, byDay / (double) starts.size(), DAY_SPREAD);
    prediction.with(
        Feature.DEFICIT,
        deficits.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN),
        DAY_SPREAD);
    return prediction;
  }

  /** Standard deviation of the logarithm. */
  private static double unevenness(List<Double> values) {
    double[] logs = values.stream().mapToDouble(Math::log).toArray();
    double mean = Arrays.stream(logs).average().orElse(0);
    return Math.sqrt(
        Arrays.stream(logs).map(one -> (one - mean) * (one - mean)).average().orElse(0));
  }

  private static double median(List<Double> values) {
    return LogRows.median(values.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private int startsInWorstHour() {
    int most = 0;
    int from = 0;
    for (int index = 0; index < starts.size(); index++) {
      while ((starts.get(index) - starts.get(from)) * log.step_min() >= 60) {
        from++;
      }
      most = Math.max(most, index - from + 1);
    }
    return most;
  }

  private void go() {
    double first_C = log.tank_C(0);
    tank_C = first_C > COLDEST_C ? first_C : b.everydayStop_C - 2;
    for (int step = 0; step < log.steps(); step++) {
      if (log.isKnown(step)) {
        relay(step);
        in_min += log.step_min();
        calls(step);
        heatPump(step);
        tank_C += tank_K(step, runs && !b.tankStaysCold && Double.isNaN(b.heatingRun_min));
      }
    }
  }

  private void relay(int step) {
    double step_min = log.step_min();
    double read_kW = seen_kW(Math.max(0, step - log.steps(b.readsLate_min)));
    above_min = read_kW >= b.start_kW ? above_min + step_min : 0;
    below_min = read_kW <= b.stop_kW ? below_min + step_min : 0;
    closed =
        closed
            ? below_min < Math.max(0.9 * step_min, b.stopDelay_min) || b.isBridged(log, step)
            : above_min >= Math.max(0.9 * step_min, b.startDelay_min);
    closedFor_min = closed ? closedFor_min + step_min : 0;
  }

  private boolean isSupplied(int step) {
    return !b.supplyCut || closed || log.hour(step) < NIGHT_UNTIL_H;
  }

  /** Everyday programme, relay's contact, another controller, disinfection. */
  private void calls(int step) {
    double own_C = tank_C + b.sensorHigh_K;
    everyday =
        isSupplied(step) && (everyday ? own_C < b.everydayStop_C : own_C <= b.everydayStart_C);
    boolean other = !runs && in_min >= b.otherCalls_min;
    boolean opened = runs && in_min >= Math.min(b.bounce_min, b.otherRuns_min) + b.minimumRun_min;
    boolean contact =
        closed && !opened && !(own_C >= b.surplusStop_C) && (runs || !(own_C > b.surplusStart_C));
    boolean disinfects =
        b.disinfects && log.hour(step) < NIGHT_UNTIL_H && (runs || in_min >= b.retriesAfter_min);
    boolean rooms = runs ? in_min < b.heatingRun_min : in_min >= b.heatingPause_min;
    called = everyday || contact || other || disinfects || rooms;
    called_min = called ? called_min + log.step_min() : 0;
  }

  private void heatPump(int step) {
    if (runs) {
      boolean stops =
          tank_C >= b.limit_C
              || !isSupplied(step)
              || in_min >= b.givesUp_min
              || (!called && in_min >= b.minimumRun_min);
      if (stops) {
        runs_min.add(in_min);
        runs = false;
        in_min = 0;
      }
    } else if (called_min >= Math.max(log.step_min(), b.lag_min)
        && in_min >= b.minimumOff_min
        && !(tank_C > b.limit_C - BELOW_LIMIT_K)) {
      begin(step, in_min, closed && !everyday && closedFor_min < PROMPT_MIN + b.lag_min);
      runs = true;
      in_min = 0;
    }
  }

  private void begin(int step, double pause_min, boolean forSurplus) {
    if (!starts.isEmpty() && pause_min < 90) {
      pauses_min.add(pause_min);
    }
    starts.add(step);
    double before_kW = log.before_kW(step);
    if (forSurplus && Double.isFinite(before_kW)) {
      deficits.add(Math.max(0, Math.min(1, (b.input_kW - before_kW) / b.input_kW)));
    }
  }

  /** What the relay reads: as the log has it, with the heat pump as it runs here. */
  private double seen_kW(int step) {
    double pump_kW = runs ? b.input_kW : 0;
    boolean blind = b.sees != Behaviour.Sees.ALL || b.counts.contains(Relay.Counts.HEAT_PUMP);
    return b.read_kW(log, step) + b.readsHigh_kW + (blind ? 0 : log.pump_kW(step) - pump_kW);
  }

  /** What the tank gains or loses in a step. */
  private double tank_K(int step, boolean heats) {
    double hours = log.step_min() / 60;
    double seen_K = step == 0 ? Double.NaN : log.tank_C(step) - log.tank_C(step - 1);
    double falls_K = seen_K < 0 ? seen_K : Double.isNaN(seen_K) ? -FALL_K_PER_H * hours : 0;
    return falls_K + (heats ? Math.max(0, b.rise_K_per_h) * hours : 0);
  }
}
