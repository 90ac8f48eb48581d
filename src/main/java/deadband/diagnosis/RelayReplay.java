package deadband.diagnosis;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.DoubleStream;

/** Where the relay stands at each step of a log if it acts so, with the heat pump as it ran. */
final class RelayReplay {

  /** A change of the surplus from one reading to the next that shows a cloud [kW]. */
  private static final double CLOUD_KW = 0.3;

  private static final double SHORTEST_MIN = 0.2;

  /** What the relay's state depends on. */
  private record Key(
      Behaviour.Sees sees,
      double start_kW,
      double stop_kW,
      double startDelay_min,
      double stopDelay_min,
      double bridged_min,
      double late_min,
      boolean vehicleSeen) {}

  /** The log's beginnings and ends of runs may be off against those of the relay by this [min]. */
  private static final double OFF_MIN = 1;

  private final Watched log;
  private final Map<Key, boolean[]> known = new HashMap<>();

  /** Steps in which the heat pump may not have started yet, or stopped, for all the log shows. */
  private final boolean[] starts;

  private final boolean[] stops;

  RelayReplay(Watched log) {
    this.log = log;
    this.starts = around(log, log.runs().stream().mapToDouble(Cycle::start_s));
    this.stops = around(log, log.runs().stream().mapToDouble(Cycle::end_s));
  }

  private static boolean[] around(Watched log, DoubleStream instants_s) {
    boolean[] around = new boolean[log.steps()];
    double step_min = log.step_min();
    int before = (int) Math.ceil(log.interval_min() / step_min);
    int after = (int) Math.ceil((log.interval_min() + OFF_MIN) / step_min);
    instants_s.forEach(
        instant_s -> {
          int step = log.step(instant_s);
          Arrays.fill(
              around, Math.max(0, step - before), Math.min(around.length, step + after), true);
        });
    return around;
  }

  /**
   * Whether it is closed, step by step.
   *
   * @param off_kW what it reads more than the log's meter
   * @param delays factor on its delays
   */
  boolean[] closed(Behaviour b, double off_kW, double delays) {
    double high_kW = off_kW + b.readsHigh_kW;
    Key key =
        new Key(
            b.sees,
            b.start_kW - high_kW,
            b.stop_kW - high_kW,
            delays * b.startDelay_min,
            delays * b.stopDelay_min,
            b.bridged_min,
            b.readsLate_min,
            b.vehicleSeen);
    return Objects.requireNonNull(known.computeIfAbsent(key, k -> replayed(k, b)));
  }

  private boolean[] replayed(Key key, Behaviour b) {
    boolean[] closed = new boolean[log.steps()];
    if (!log.hasSurplus()) {
      return closed;
    }
    int late = log.steps(key.late_min);
    boolean brief = key.stopDelay_min < reading_min();
    double least_min = 0.99 * log.step_min();
    // the first step below a threshold may be below it for a part only
    double half_min = log.step_min() / 2;
    double above_min = 0;
    double below_min = 0;
    boolean now = false;
    boolean seen = b.isPumpRead() && Double.isFinite(b.input_kW);
    for (int step = 0; step < closed.length; step++) {
      int read = Math.max(0, step - late);
      double read_kW = b.read_kW(log, read);
      double high_kW = seen && starts[read] ? read_kW + log.pump_kW(read) : read_kW;
      double low_kW = brief ? read_kW - dip_kW(read, key.stopDelay_min) : read_kW;
      low_kW -= seen && stops[read] ? Math.max(0, b.input_kW - log.pump_kW(read)) : 0;
      above_min = high_kW >= key.start_kW ? above_min + log.step_min() : 0;
      below_min = low_kW <= key.stop_kW ? below_min + log.step_min() : 0;
      if (Double.isNaN(read_kW)) {
        now = false;
      } else if (!now && above_min >= Math.max(least_min, key.startDelay_min - half_min)) {
        now = true;
      } else if (now
          && below_min >= Math.max(least_min, key.stopDelay_min - half_min)
          && !b.isBridged(log, step)) {
        now = false;
      }
      closed[step] = now;
    }
    return closed;
  }

  /** What a mean covers at least. */
  private double reading_min() {
    return Math.max(log.interval_min(), log.step_min());
  }

  /** How far the surplus may have been below the mean of a reading for as long as a short delay. */
  private double dip_kW(int step, double delay_min) {
    int beside = log.steps(reading_min());
    double before_kW = log.before_kW(Math.max(0, step - beside));
    double after_kW = log.before_kW(Math.min(log.steps() - 1, step + beside));
    double drop_kW = Math.max(before_kW, after_kW) - log.before_kW(step);
    return drop_kW > CLOUD_KW
        ? drop_kW * (reading_min() / Math.max(SHORTEST_MIN, delay_min) - 1)
        : 0;
  }
}
