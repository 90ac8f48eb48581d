package deadband.diagnosis;

import deadband.meterlog.MeterLog;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * How likely the runs of a log are if relay and heat pump act so.
 *
 * <p>The relay is run over the readings of the log, and the heat pump over the tank's temperature,
 * step by step, with the run or pause as it was up to there. What is due happens at a steady rate
 * within about a minute; what is not due hardly ever: the beginnings and ends of the runs are a
 * point process with these rates. Noise: the thresholds of relay and tank differ from what the
 * log's meter and sensor show, by an error that stays through the log and by one that changes from
 * run to run; and a share of runs and pauses begins or ends for a reason of its own, such as
 * draw-off or space heating. The errors are those of usual meters and sensors, by common practice;
 * the shares and the times of what is not known are assumed.
 */
final class RunLikelihood {

  /** Share of runs and pauses with a reason of their own: of most homes, and of a busy one. */
  private static final List<Double> OWN_REASONS = List.of(1 / 16.0, 1 / 4.0);

  /** Runs and pauses with a reason of their own last so long on average, short or long [min]. */
  private static final double[] OWN_RUN_MIN = {20, 80};

  private static final double[] OWN_PAUSE_MIN = {120, 600};

  /** What is due happens within about this [min]. */
  private static final double PROMPT_MIN = 0.6;

  /** What is not due happens once in this [min]. */
  private static final double NEVER_MIN = 1e4;

  /** The steps of the log may be off against those of the relay by this [min]. */
  private static final double AROUND_MIN = 0.5;

  /** Error that stays: of the meter against the relay's reading, of one tank sensor to another. */
  private static final double STAYS_KW = 0.1;

  private static final double STAYS_K = 0.7;
  private static final double[] STAYING_KW = {-0.2, -0.15, -0.1, -0.05, 0, 0.05, 0.1, 0.15, 0.2};
  private static final double[] STAYING_K = {
    -1.5, -1, -0.75, -0.5, -0.25, 0, 0.25, 0.5, 0.75, 1, 1.5
  };

  /** Share of homes whose everyday programme is blocked by day. */
  private static final double BLOCKED = 0.3;

  private static final double BLOCKED_FROM_H = 8;
  private static final double BLOCKED_UNTIL_H = 18;

  /** Errors that change from run to run: standard deviations of meter, tank sensor and delays. */
  private static final double CHANGES_KW = 0.06;

  private static final double CHANGES_K = 0.3;
  private static final double CHANGES_DELAYS = 0.05;

  /** Quantiles of the normal distribution that halve nine equal shares of it. */
  private static final double[] QUANTILES = {
    -1.593, -0.967, -0.589, -0.282, 0, 0.282, 0.589, 0.967, 1.593
  };

  /** Errors that change from run to run, equally likely: a lattice over their distributions. */
  private static final List<Level> LEVELS =
      IntStream.range(0, QUANTILES.length).mapToObj(Level::of).toList();

  /** Without a tank temperature: share of runs for the surplus, and what the tank does [min]. */
  private static final double FOR_SURPLUS = 0.6;

  private static final double TANK_CALLS_MIN = 240;
  private static final double TANK_WARM_MIN = 40;

  /** The tank's rise is known to this share, and to this beside it [K]. */
  private static final double RISE = 0.35;

  private static final double RISE_K = 1;
  private static final double COLD_K = 0.8;
  private static final double ANY_RISE_K = 20;

  /** Of the runs of a heating circuit that cycles and of hot water beside, so many heat rooms. */
  private static final double FOR_ROOMS = 0.9;

  /** A run this long that warms the tank no faster heats the rooms. */
  private static final double ROOMS_MIN = 30;

  private static final double COLD_K_PER_H = 4;

  /** A compressor at its limit starts again when the tank is cooler by this [K]. */
  private static final double BELOW_LIMIT_K = 0.4;

  /** Its hysteresis is not known: within this of the limit [K] it starts once in so long [min]. */
  private static final double NEAR_LIMIT_K = 1.5;

  private static final double AGAIN_MIN = 30;

  private static final double NIGHT_UNTIL_H = 6.5;

  /** Spread of the runs and pauses of a heating circuit, of the logarithm. */
  private static final double HEATING_SPREAD = 0.3;

  private static final double LONG_AGO_MIN = 600;
  private static final double LOWEST_LOG = -300;

  /** An end so much more to be expected with one cause than with another is evidence. */
  private static final double TELLING = 3;

  private record Level(double kW, double tank_K, double delays) {

    static Level of(int index) {
      int many = QUANTILES.length;
      return new Level(
          CHANGES_KW * QUANTILES[index],
          CHANGES_K * QUANTILES[2 * index % many],
          1 + CHANGES_DELAYS * QUANTILES[4 * index % many]);
    }
  }

  /** A run, or a pause, in steps; {@code ends} unless a gap or the log's end cuts it. */
  private record Period(boolean running, int from, int until, boolean whole, boolean ends) {}

  /** Errors that stay through the log. */
  record Errors(double kW, double tank_K, boolean blocked) {

    static final Errors NONE = new Errors(0, 0, false);

    double log() {
      return -0.5 * (kW / STAYS_KW) * (kW / STAYS_KW)
          - 0.5 * (tank_K / STAYS_K) * (tank_K / STAYS_K)
          + Math.log(blocked ? BLOCKED : 1 - BLOCKED);
    }
  }

  /** Relay and everyday programme, step by step, under one level of the errors. */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  private record Calls(boolean[] relay, boolean[] everyday, double tank_K) {}

  private final Watched log;
  private final RelayReplay replay;
  private final List<Period> periods = new ArrayList<>();
  private final int around;

  RunLikelihood(Watched log) {
    this.log = log;
    this.replay = new RelayReplay(log);
    this.around = Math.max(1, log.steps(Math.max(AROUND_MIN, 0.5 * log.interval_min())));
    split();
    leaveOutRooms();
  }

  /** Where some runs warm the tank, a long one that does not heats the rooms, and says nothing. */
  private void leaveOutRooms() {
    List<Period> runs = periods.stream().filter(p -> !Double.isNaN(rise_K(p))).toList();
    long warm = runs.stream().filter(p -> !isCold(p)).count();
    if (warm < 2 || warm < 0.1 * runs.size()) {
      return;
    }
    for (int index = periods.size() - 1; index >= 0; index--) {
      Period p = periods.get(index);
      if (!Double.isNaN(rise_K(p)) && isCold(p) && minutes(p) >= ROOMS_MIN) {
        periods.remove(index);
        if (index > 0 && periods.get(index - 1).until == p.from) {
          periods.remove(--index);
        }
      }
    }
  }

  private boolean isCold(Period p) {
    return rise_K(p) / minutes(p) * 60 <= COLD_K_PER_H;
  }

  private double minutes(Period p) {
    return (p.until - p.from) * log.step_min();
  }

  private void split() {
    boolean[] runs = new boolean[log.steps()];
    for (Cycle run : log.runs()) {
      int start = log.step(run.start_s());
      Arrays.fill(runs, start, Math.max(start + 1, log.step(run.end_s())), true);
    }
    int from = 0;
    boolean whole = false;
    for (int step = 1; step <= runs.length; step++) {
      boolean gap = step == runs.length || !log.isKnown(step);
      boolean changes = !gap && runs[step] != runs[step - 1];
      boolean known = log.isKnown(step - 1);
      if (known && (gap || changes)) {
        periods.add(new Period(runs[step - 1], from, step, whole, changes));
      }
      if (gap || changes || !known) {
        from = step;
        whole = changes;
      }
    }
  }

  /** Runs and pauses whose end is in the log. */
  int size() {
    return (int) periods.stream().filter(Period::ends).count();
  }

  /** The errors of the meters under which this explains the runs best, one after the other. */
  Errors errors(Behaviour b) {
    Errors best = Errors.NONE;
    double most = log(b, best);
    for (boolean better = true; better; ) {
      better = false;
      for (Errors errors : beside(best)) {
        double now = log(b, errors);
        if (now > most) {
          best = errors;
          most = now;
          better = true;
        }
      }
    }
    return best;
  }

  /** Errors that differ in one thing from these. */
  private List<Errors> beside(Errors e) {
    List<Errors> beside = new ArrayList<>();
    if (log.hasTank()) {
      for (double off_K : STAYING_K) {
        beside.add(new Errors(e.kW, off_K, e.blocked));
      }
    }
    if (log.hasSurplus()) {
      for (double off_kW : STAYING_KW) {
        beside.add(new Errors(off_kW, e.tank_K, e.blocked));
      }
    }
    beside.add(new Errors(e.kW, e.tank_K, !e.blocked));
    return beside;
  }

  /** Log of the probability density of all runs and pauses, under errors that stay. */
  double log(Behaviour b, Errors errors) {
    double[] each = each(b, errors);
    return errors.log() + OWN_REASONS.stream().mapToDouble(own -> sum(each, own)).max().orElse(0);
  }

  private double sum(double[] each, double own) {
    double all = 0;
    for (int index = 0; index < each.length; index++) {
      all += Math.log((1 - own) * each[index] + own * own(periods.get(index)));
    }
    return all;
  }

  /** Log of the density of runs and pauses that have nothing to do with what is known. */
  double logOfOwn() {
    return periods.stream().mapToDouble(p -> Math.log(own(p))).sum();
  }

  /** How many of the beginnings and ends of runs this explains better than no reason does. */
  int explained(Behaviour b, Errors errors) {
    double[] each = each(b, errors);
    int explained = 0;
    for (int index = 0; index < each.length; index++) {
      Period p = periods.get(index);
      explained += p.ends && each[index] > own(p) ? 1 : 0;
    }
    return explained;
  }

  /**
   * The run or pause whose end is more to be expected with one than with another, with its time and
   * what the meters show then; empty where none is.
   */
  String evidence(Behaviour b, Errors errors, Behaviour other, Errors others) {
    double[] mine = each(b, errors);
    double[] theirs = each(other, others);
    int most = -1;
    double ratio = TELLING;
    for (int index = 0; index < mine.length; index++) {
      double own = own(periods.get(index));
      double now = (mine[index] + own) / (theirs[index] + own);
      if (periods.get(index).ends && now > ratio) {
        most = index;
        ratio = now;
      }
    }
    return most < 0 ? "" : says(periods.get(most));
  }

  private String says(Period p) {
    int last = Math.min(p.until, log.steps() - 1);
    String surplus =
        log.hasSurplus() && Double.isFinite(log.before_kW(last))
            ? String.format(
                Locale.ROOT, " at a surplus of %.1f kW", Values.tenths(log.before_kW(last)))
            : "";
    double tank_C = log.tank_C(last);
    String tank =
        Double.isNaN(tank_C)
            ? ""
            : String.format(
                Locale.ROOT, "%s a tank of %.1f °C", surplus.isEmpty() ? " at" : " and", tank_C);
    return String.format(
        Locale.ROOT,
        "%s at %s, %s %s,%s%s",
        p.running ? "the stop" : "the start",
        log.clock(last),
        p.running ? "after a run of" : "after a pause of",
        MeterLog.duration(Math.round(60 * minutes(p))),
        surplus,
        tank);
  }

  private double[] each(Behaviour b, Errors errors) {
    List<Calls> levels = LEVELS.stream().map(level -> calls(b, errors, level)).toList();
    double[] each = new double[periods.size()];
    for (int index = 0; index < each.length; index++) {
      Period p = periods.get(index);
      double density = 0;
      for (Calls calls : levels) {
        double one = density(b, p, calls, false);
        density +=
            log.hasTank()
                ? one
                : FOR_SURPLUS * one + (1 - FOR_SURPLUS) * density(b, p, calls, true);
      }
      each[index] = density / levels.size() * ofRise(b, p);
    }
    return each;
  }

  private Calls calls(Behaviour b, Errors errors, Level level) {
    boolean[] closed = replay.closed(b, errors.kW + level.kW, level.delays);
    double tank_K = errors.tank_K + level.tank_K;
    return new Calls(closed, everyday(b, closed, errors.blocked, tank_K), tank_K);
  }

  /** Where the everyday programme calls. */
  private boolean[] everyday(Behaviour b, boolean[] closed, boolean blockedByDay, double off_K) {
    boolean[] calls = new boolean[log.steps()];
    boolean now = false;
    for (int step = 0; step < calls.length; step++) {
      double own_C = log.tank_C(step) + b.sensorHigh_K + off_K;
      double hour = log.hour(step);
      boolean barred =
          (blockedByDay && hour >= BLOCKED_FROM_H && hour < BLOCKED_UNTIL_H)
              || (b.supplyCut && hour >= NIGHT_UNTIL_H && !closed[step]);
      if (own_C <= b.everydayStart_C && !barred) {
        now = true;
      } else if (own_C >= b.everydayStop_C || barred) {
        now = false;
      }
      calls[step] = now;
    }
    return calls;
  }

  /** Density of a period that has nothing to do with what is known. */
  private double own(Period p) {
    double minutes = minutes(p);
    double[] means = p.running ? OWN_RUN_MIN : OWN_PAUSE_MIN;
    double density = 0;
    for (double mean_min : means) {
      density += 0.5 * Math.exp(-minutes / mean_min) * (p.ends ? 1 / mean_min : 1);
    }
    double rise_K = rise_K(p);
    return Double.isNaN(rise_K)
        ? density
        : density * (0.5 * normal(rise_K, 0, COLD_K) + 0.5 / ANY_RISE_K);
  }

  /** Density of the tank's rise over a run [1/K]. */
  private double ofRise(Behaviour b, Period p) {
    double rise_K = rise_K(p);
    if (Double.isNaN(rise_K)) {
      return 1;
    }
    double expected_K = b.rise_K_per_h * minutes(p) / 60;
    double cold = normal(rise_K, 0, COLD_K);
    double warm =
        Double.isNaN(expected_K)
            ? 1 / ANY_RISE_K
            : normal(rise_K, expected_K, RISE * expected_K + RISE_K);
    return b.tankStaysCold
        ? cold
        : Double.isNaN(b.heatingRun_min) ? warm : FOR_ROOMS * cold + (1 - FOR_ROOMS) * warm;
  }

  private double rise_K(Period p) {
    return p.running && p.ends && p.whole
        ? log.tank_C(p.until) - log.tank_C(p.from - 1)
        : Double.NaN;
  }

  private static double normal(double value, double mean, double spread) {
    double z = (value - mean) / spread;
    return Math.exp(-0.5 * z * z) / (spread * Math.sqrt(2 * Math.PI));
  }

  /** Density of a period, if it is for the tank's everyday call or not. */
  private double density(Behaviour b, Period p, Calls calls, boolean forTank) {
    int last = Math.min(log.steps(), p.until + around + 1);
    int[] due = due(b, p, calls, forTank, last);
    Rates rates = Rates.of(b, log.hasTank());
    double survived = 0;
    for (int step = p.from; step < p.until; step++) {
      survived += rate(b, rates, p, calls, forTank, due, step);
    }
    double gone = Math.max(LOWEST_LOG, -survived * log.step_min());
    return Math.exp(gone)
        * (p.ends ? rate(b, rates, p, calls, forTank, due, Math.min(p.until, last - 1)) : 1);
  }

  /** Rates of what comes by chance, of a run on the relay's call or not, and of a pause [1/min]. */
  private record Rates(
      double onContact, double offContact, double atAll, double calls, double pause) {

    static Rates of(Behaviour b, boolean tankShown) {
      return new Rates(
          1 / b.bounce_min + 1 / b.otherHolds_min,
          1 / b.otherRuns_min,
          (tankShown ? 1 / b.givesUp_min : 1 / warm_min(b)) + 1 / NEVER_MIN,
          1 / b.otherCalls_min,
          (tankShown ? 0 : 1 / TANK_CALLS_MIN) + 1 / NEVER_MIN);
    }

    /** How long it takes to heat the tank by the smaller of the differentials. */
    private static double warm_min(Behaviour b) {
      double least_K =
          Math.min(b.surplusStop_C - b.surplusStart_C, b.everydayStop_C - b.everydayStart_C);
      double warm_min = 60 * least_K / b.rise_K_per_h;
      return warm_min > 0 ? Math.min(TANK_WARM_MIN, warm_min) : TANK_WARM_MIN;
    }
  }

  /** At how many of the steps so far the period's end was due. */
  private int[] due(Behaviour b, Period p, Calls calls, boolean forTank, int last) {
    int[] due = new int[last - p.from + 1];
    double called_min = 0;
    double before_min = p.whole ? 0 : LONG_AGO_MIN;
    for (int step = p.from; step < last; step++) {
      double elapsed_min = (step + 1 - p.from) * log.step_min() + before_min;
      boolean is;
      if (p.running) {
        is = stops(b, calls, forTank, elapsed_min, step);
      } else {
        called_min = isCalled(b, calls, forTank, step) ? called_min + log.step_min() : 0;
        is =
            called_min >= Math.max(log.step_min(), b.lag_min)
                && elapsed_min >= b.minimumOff_min
                && !(log.tank_C(step) + calls.tank_K > b.limit_C - BELOW_LIMIT_K);
      }
      due[step - p.from + 1] = due[step - p.from] + (is ? 1 : 0);
    }
    return due;
  }

  private boolean isCalled(Behaviour b, Calls calls, boolean forTank, int step) {
    double own_C = log.tank_C(step) + calls.tank_K + b.sensorHigh_K;
    return calls.everyday[step] || (calls.relay[step] && !forTank && !(own_C > b.surplusStart_C));
  }

  private boolean stops(Behaviour b, Calls calls, boolean forTank, double ran_min, int step) {
    double tank_C = log.tank_C(step) + calls.tank_K;
    double own_C = tank_C + b.sensorHigh_K;
    boolean night = log.hour(step) < NIGHT_UNTIL_H;
    if (tank_C >= b.limit_C || (b.supplyCut && !calls.relay[step] && !night)) {
      return true;
    }
    if (b.disinfects && night) {
      return false;
    }
    boolean called =
        calls.everyday[step]
            || forTank
            || (calls.relay[step] && !(own_C >= b.surplusStop_C))
            || Double.isFinite(b.heatingRun_min);
    return own_C >= Math.max(b.surplusStop_C, b.everydayStop_C)
        || (!called && ran_min >= b.minimumRun_min);
  }

  /** Rate at which a period ends at a step [1/min]. */
  private double rate(
      Behaviour b, Rates rates, Period p, Calls calls, boolean forTank, int[] due, int step) {
    int from = Math.max(0, step - around - p.from);
    int until = Math.min(due.length - 1, step + around + 1 - p.from);
    int many = due[until] - due[from];
    double known = many == 0 ? 0 : many / (PROMPT_MIN * (until - from));
    double elapsed_min = (step + 0.5 - p.from) * log.step_min();
    return known
        + (p.running
            ? otherStops(b, rates, isOnContact(p, calls, forTank, step), elapsed_min)
            : otherStarts(b, rates, step, elapsed_min)
                + again(b, calls, forTank, step, elapsed_min));
  }

  /** Rate at which a compressor that is called starts again near its limit. */
  private double again(Behaviour b, Calls calls, boolean forTank, int step, double pause_min) {
    int at = Math.min(step, log.steps() - 1);
    double below_K = b.limit_C - log.tank_C(at) - calls.tank_K;
    boolean near = below_K < NEAR_LIMIT_K && pause_min >= b.minimumOff_min;
    return near && isCalled(b, calls, forTank, at) ? 1 / AGAIN_MIN : 0;
  }

  private static boolean isOnContact(Period p, Calls calls, boolean forTank, int step) {
    int at = Math.min(step, p.until - 1);
    return calls.relay[at] && !calls.everyday[at] && !forTank;
  }

  private static double otherStops(Behaviour b, Rates rates, boolean onContact, double ran_min) {
    double rate = rates.atAll + heating(b.heatingRun_min, ran_min);
    if (ran_min < b.minimumRun_min) {
      return rate;
    }
    return rate + (onContact ? rates.onContact : rates.offContact);
  }

  private double otherStarts(Behaviour b, Rates rates, int step, double pause_min) {
    double rate = rates.pause + heating(b.heatingPause_min, pause_min);
    if (rates.calls > 0
        && pause_min >= b.minimumOff_min
        && !(log.tank_C(step) + b.sensorHigh_K > b.surplusStart_C)) {
      rate += rates.calls;
    }
    return b.disinfects && log.hour(step) < NIGHT_UNTIL_H && pause_min > b.retriesAfter_min
        ? rate + 1 / b.retriesAfter_min
        : rate;
  }

  /** Rate of ending about an expected time: of a distribution that is logistic in the logarithm. */
  private static double heating(double expected_min, double now_min) {
    if (Double.isNaN(expected_min)) {
      return 0;
    }
    double steep = Math.PI / Math.sqrt(3) / HEATING_SPREAD;
    double z = steep * Math.log(now_min / expected_min);
    return steep / now_min / (1 + Math.exp(-z));
  }
}
