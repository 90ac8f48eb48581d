package deadband.diagnosis;

import deadband.meterlog.Column;
import deadband.meterlog.Meaning;
import deadband.meterlog.MeterLog;
import java.util.Arrays;
import java.util.List;

/** Reads off a log how the runs begin, go and end, beside the settings as entered. */
final class RunReader {

  /** Error of what a meter shows against what the relay reads [kW]. */
  private static final double NEAR_KW = 0.25;

  /** Noise of a meter beside the relay's own [kW]. */
  private static final double CLOSE_KW = 0.1;

  /** As far below its start a relay may seem to close, by an error of the reading [kW]. */
  private static final double BELOW_KW = 1.5;

  /** Error of one tank sensor against another [K]. */
  private static final double NEAR_K = 1.5;

  /** A run that follows within this was not ended because the tank was warm enough [min]. */
  private static final double SOON_MIN = 25;

  /** Runs that do not warm the tank and last longer are space heating [min]. */
  private static final double HEATING_MIN = 30;

  private final MeterLog log;
  private final Cycles cycles;
  private final AsSet set;
  private final List<Cycle> whole;
  private final double[] surplus_kW;
  private final double[] tank_C;
  private final LogRows rows;
  private final boolean[] closed;

  /** Sums, and numbers of values, of the surplus up to each row. */
  private final double[] sum_kW;

  private final int[] known;

  RunReader(MeterLog log, Cycles cycles, AsSet set, boolean surplusShown) {
    this.log = log;
    this.cycles = cycles;
    this.set = set;
    this.surplus_kW = surplusShown ? Surplus.of(log, cycles).orElse(new double[0]) : new double[0];
    this.tank_C = log.column(Meaning.TANK).map(Column::values).orElse(new double[0]);
    this.rows = new LogRows(log);
    this.closed = new boolean[surplus_kW.length];
    this.sum_kW = new double[surplus_kW.length + 1];
    this.known = new int[surplus_kW.length + 1];
    for (int row = 0; row < surplus_kW.length; row++) {
      boolean finite = Double.isFinite(surplus_kW[row]);
      sum_kW[row + 1] = sum_kW[row] + (finite ? surplus_kW[row] : 0);
      known[row + 1] = known[row] + (finite ? 1 : 0);
    }
    replayRelay();
    this.whole = forTheTank();
  }

  /** The runs for the tank, without those that are cut off. */
  List<Cycle> whole() {
    return whole;
  }

  /** Surplus before flexible loads, row by row; empty where it is not shown. */
  double[] surplus_kW() {
    return surplus_kW;
  }

  /** Tank temperature, row by row; empty where it is not shown. */
  double[] tank_C() {
    return tank_C;
  }

  /** Whether the relay stands closed in a row, if it does as entered. */
  boolean isClosed(int row) {
    return closed[row];
  }

  /** What started each run, cut ones too. */
  List<Trigger> triggers() {
    return cycles.list().stream().map(this::trigger).toList();
  }

  /** What ended each run. */
  List<Ending> endings() {
    double shared_C = sharedStop_C();
    return cycles.list().stream().map(cycle -> ending(cycle, shared_C)).toList();
  }

  /** Where the relay stands row by row if it does as entered with what the meters show. */
  private void replayRelay() {
    boolean[] runs = new boolean[closed.length];
    for (Cycle cycle : cycles.list()) {
      Arrays.fill(
          runs,
          Math.min(runs.length, cycle.first()),
          Math.min(runs.length, cycle.last() + 1),
          true);
    }
    double above_s = 0;
    double below_s = 0;
    boolean now = false;
    for (int row = 0; row < closed.length; row++) {
      double opens_kW = runs[row] ? set.opens_kW() : set.opensAtRest_kW();
      above_s = surplus_kW[row] >= set.closes_kW() - CLOSE_KW ? above_s + log.span_s(row) : 0;
      below_s = surplus_kW[row] <= opens_kW - NEAR_KW ? below_s + log.span_s(row) : 0;
      if (!now && above_s >= 0.9 * delay_s(set.startDelay_min())) {
        now = true;
      } else if (now && below_s >= delay_s(set.stopDelay_min()) + 60) {
        now = false;
      }
      closed[row] = now;
    }
  }

  private double delay_s(double delay_min) {
    return Math.max(log.interval_s(), 60 * set.orZero(delay_min));
  }

  /** Whether the relay stands closed some time in the minute or two before the heat pump's lag. */
  private boolean isCalled(Cycle cycle) {
    int from = rows.row(cycle.start_s() - 60 * (set.orZero(set.startLag_min()) + 2));
    for (int row = Math.max(0, from); row <= cycle.first() && row < closed.length; row++) {
      if (closed[row]) {
        return true;
      }
    }
    return false;
  }

  /** The runs without those that heat the rooms, and without those that are cut off. */
  private List<Cycle> forTheTank() {
    List<Cycle> all = cycles.list().stream().filter(c -> !c.cut()).toList();
    long rising = all.stream().filter(c -> rise_K_per_h(c) > least_K_per_h()).count();
    // where some runs warm the tank, one that does not had nothing to do with it
    boolean some = rising >= 2 && rising > 0.3 * all.size();
    return all.stream().filter(c -> !isLongWithoutRise(c) || !(some || isUncalled(c))).toList();
  }

  private boolean isUncalled(Cycle cycle) {
    Trigger trigger = trigger(cycle);
    return trigger == Trigger.NONE || trigger == Trigger.DISINFECTION;
  }

  private boolean isLongWithoutRise(Cycle cycle) {
    return cycle.run_min() >= HEATING_MIN && rise_K_per_h(cycle) <= least_K_per_h();
  }

  private double least_K_per_h() {
    return Double.isNaN(set.rise_K_per_h()) ? 4 : Math.min(4, 0.3 * set.rise_K_per_h());
  }

  private double rise_K_per_h(Cycle cycle) {
    return tank_C.length == 0
        ? Double.NaN
        : (stopTank_C(cycle) - startTank_C(cycle)) / (cycle.run_min() / 60);
  }

  /** Highest surplus, over the start delay, shortly before a start. */
  private double beforeStart_kW(Cycle cycle) {
    double delay_min = Math.max(1, set.orZero(set.startDelay_min()));
    double back_min =
        delay_min + set.orZero(set.startLag_min()) + set.orZero(set.stopDelay_min()) + 2;
    int from = rows.row(cycle.start_s() - 60 * back_min);
    return extreme(from, Math.max(from + 1, cycle.first()), 0.9 * delay_min, 1);
  }

  /**
   * Whether the surplus came near the start within hours, has not fallen below the stop since, and
   * the tank is now at the start of the surplus programme: what a relay that closed early does.
   */
  private boolean hasWaited(Cycle cycle) {
    boolean cooled =
        tank_C.length > 0 && Math.abs(startTank_C(cycle) - set.surplusStart_C()) <= NEAR_K;
    if (!cooled || surplus_kW.length == 0) {
      return false;
    }
    int first = rows.row(cycle.start_s() - 3 * 3600);
    for (int row = cycle.first() - 1; row > first; row--) {
      if (surplus_kW[row] <= set.opensAtRest_kW()) {
        return false;
      }
      if (surplus_kW[row] >= set.closes_kW() - BELOW_KW) {
        return true;
      }
    }
    return false;
  }

  Trigger trigger(Cycle cycle) {
    double before_kW = surplus_kW.length == 0 ? Double.NaN : beforeStart_kW(cycle);
    if (before_kW >= set.closes_kW() - NEAR_KW || isCalled(cycle)) {
      return Trigger.RELAY;
    }
    boolean below = before_kW >= Math.max(0.3, set.closes_kW() - BELOW_KW) || hasWaited(cycle);
    if (tank_C.length == 0 || Double.isNaN(set.everydayStart_C())) {
      return below ? Trigger.BELOW_START : Trigger.NOT_SHOWN;
    }
    double at_C = startTank_C(cycle);
    if (at_C <= set.everydayStart_C() + NEAR_K) {
      return Trigger.TEMPERATURE;
    }
    if (below) {
      return Trigger.BELOW_START;
    }
    if (surplus_kW.length == 0 || Double.isNaN(before_kW + at_C)) {
      return Trigger.NOT_SHOWN;
    }
    return at_C >= set.everydayStop_C() - 1 ? Trigger.DISINFECTION : Trigger.NONE;
  }

  double startTank_C(Cycle cycle) {
    return LogRows.mean(tank_C, cycle.first() - rows.rows(1), cycle.first() + 1);
  }

  double stopTank_C(Cycle cycle) {
    double[] around =
        LogRows.within(tank_C, cycle.last() - rows.rows(1), cycle.last() + 1 + rows.rows(3));
    return Arrays.stream(around).max().orElse(Double.NaN);
  }

  Ending ending(Cycle cycle, double shared_C) {
    double at_C = tank_C.length == 0 ? Double.NaN : stopTank_C(cycle);
    boolean onSurplus = surplus_kW.length > 0 && highest(cycle) >= set.closes_kW() - NEAR_KW;
    boolean atStop =
        onSurplus
            ? at_C >= highStop_C() - NEAR_K
            : at_C >= set.everydayStop_C() - NEAR_K
                && startTank_C(cycle) < set.everydayStop_C() - 1;
    if (atStop) {
      return Ending.TEMPERATURE;
    }
    if (at_C >= set.limit_C() - NEAR_K || Math.abs(at_C - shared_C) <= 1) {
      return Ending.LIMIT;
    }
    if (!onSurplus) {
      return Double.isNaN(at_C) || surplus_kW.length == 0 ? Ending.NOT_SHOWN : Ending.NONE;
    }
    double low_kW = lowest(cycle);
    if (low_kW < set.closes_kW() - NEAR_KW) {
      return Ending.SURPLUS_FELL;
    }
    if (Double.isNaN(at_C) && !(pauseAfter_min(cycle) <= SOON_MIN)) {
      return Ending.NOT_SHOWN;
    }
    return low_kW <= set.bandTop_kW() + NEAR_KW ? Ending.GAP : Ending.NONE;
  }

  double pauseAfter_min(Cycle cycle) {
    int index = cycles.list().indexOf(cycle);
    return index + 1 >= cycles.count()
        ? Double.NaN
        : (cycles.list().get(index + 1).start_s() - cycle.end_s()) / 60;
  }

  private double highStop_C() {
    return Double.isNaN(set.surplusStop_C())
        ? set.everydayStop_C()
        : Math.max(set.surplusStop_C(), set.orZero(set.everydayStop_C()));
  }

  /**
   * The tank temperature, below every stop, at which runs end again and again; NaN where there is
   * none.
   */
  double sharedStop_C() {
    if (tank_C.length == 0) {
      return Double.NaN;
    }
    double[] ends =
        whole.stream()
            .mapToDouble(this::stopTank_C)
            .filter(
                at_C -> at_C < highStop_C() - NEAR_K && Math.abs(at_C - set.everydayStop_C()) > 1)
            .sorted()
            .toArray();
    if (ends.length < 5 || ends.length < 0.6 * whole.size()) {
      return Double.NaN;
    }
    boolean alike = ends[3 * ends.length / 4] - ends[ends.length / 4] <= 0.7;
    double[] rise = whole.stream().mapToDouble(c -> stopTank_C(c) - startTank_C(c)).toArray();
    boolean rises = LogRows.median(rise) > 0.2;
    return alike && rises ? LogRows.median(ends) : Double.NaN;
  }

  /** Highest surplus over any few minutes of a run and the relay's delay before it. */
  private double highest(Cycle cycle) {
    double before_s =
        60 * (set.orZero(set.startLag_min()) + Math.max(1, set.orZero(set.startDelay_min())));
    double width_min = Math.max(1, set.orZero(set.stopDelay_min()));
    return extreme(rows.row(cycle.start_s() - before_s), cycle.last() + 1, width_min, 1);
  }

  /** Lowest surplus, over the relay's delay, by which it can have ended a run. */
  private double lowest(Cycle cycle) {
    double back_min =
        Math.max(
            Math.max(2, set.orZero(set.stopDelay_min())) + 1,
            Math.min(cycle.run_min(), set.orZero(set.minimumRun_min()) + 1));
    int from = Math.max(cycle.first(), rows.row(cycle.end_s() - 60 * back_min));
    double width_min = Math.max(1, set.orZero(set.stopDelay_min()));
    return -extreme(from, cycle.last() + 1, width_min, -1);
  }

  /** The greatest mean over a width within some rows, of the surplus times a sign. */
  private double extreme(int from, int until, double width_min, int sign) {
    int width = rows.rows(width_min);
    double best = Double.NaN;
    int begin = Math.max(0, from);
    int last = Math.min(until, surplus_kW.length);
    for (int row = begin; row < last; row++) {
      int end = Math.min(last, row + width);
      if (row > begin && end - row < width) {
        break;
      }
      double mean = sign * surplus(row, end);
      best = Double.isNaN(best) ? mean : Math.max(best, mean);
    }
    return best;
  }

  /** Mean surplus of the rows from one until before another. */
  private double surplus(int from, int until) {
    int of = known[until] - known[from];
    return of == 0 ? Double.NaN : (sum_kW[until] - sum_kW[from]) / of;
  }
}
