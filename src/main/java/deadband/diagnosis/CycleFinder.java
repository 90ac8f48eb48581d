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
 * Finds the runs of the heat pump in a log: from its own power where that is measured, otherwise
 * from steps of the house's power as large as its input.
 *
 * <p>Own power: standby and usual power are found in the log. A run begins where the power leaves
 * standby, ends where it comes back, and counts where it comes near the usual power in between (two
 * thresholds, so that noise near one of them makes no runs). How much of its first and last row it
 * runs is told by their power over the usual one. Ideas: Brudermueller et al. 2023, Applied Energy
 * 350, 121734 (on-off cycles from smart meter data); no code.
 */
public final class CycleFinder {

  /** Above standby by this share of the usual power it may run, in readings shorter than this. */
  private static final double LEFT_STANDBY = 0.12;

  /** In coarse readings a run that fills only a part of one must show. */
  private static final double LEFT_STANDBY_COARSE = 0.05;

  private static final int COARSE_S = 121;

  /** A run comes to this share of the usual power at least in a fine log. */
  private static final double REACHES = 0.35;

  /** Shorter at its usual power is no run but a blip [s]. */
  private static final double BLIP_S = 15;

  private final MeterLog log;

  private CycleFinder(MeterLog log) {
    this.log = log;
  }

  /**
   * The runs in a log.
   *
   * @param input_kW power input entered; without it, steps of the house's power tell nothing
   */
  public static Cycles find(MeterLog log, OptionalDouble input_kW) {
    CycleFinder finder = new CycleFinder(log);
    Optional<Column> own = log.column(Meaning.HEAT_PUMP);
    if (own.isPresent()) {
      return finder.inOwnPower(own.get(), input_kW);
    }
    return StepPairs.find(log, input_kW);
  }

  private Cycles inOwnPower(Column own, OptionalDouble input_kW) {
    double[] known = Arrays.stream(own.values()).filter(Double::isFinite).sorted().toArray();
    if (known.length == 0) {
      return Cycles.none("the heat pump's power has no values");
    }
    double standby_kW = at(known, 0.05);
    double high_kW = at(known, 0.995);
    double least_kW = input_kW.isPresent() ? 0.2 * input_kW.getAsDouble() : 0.15;
    // a heat pump that runs rarely shows only in the highest values
    double most_kW = known[known.length - 1];
    double top_kW = high_kW - standby_kW < least_kW ? most_kW : high_kW;
    if (top_kW - standby_kW < least_kW) {
      return new Cycles(List.of(), "the heat pump's own power: it does not run", standby_kW, 0);
    }
    double middle_kW = standby_kW + 0.25 * (top_kW - standby_kW);
    double running_kW = at(Arrays.stream(known).filter(kW -> kW > middle_kW).toArray(), 0.5);
    return new Cycles(
        runs(own, standby_kW, running_kW), "the heat pump's own power", standby_kW, running_kW);
  }

  private static double at(double[] sorted, double share) {
    return sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  }

  private List<Cycle> runs(Column own, double standby_kW, double running_kW) {
    double rise_kW = running_kW - standby_kW;
    boolean coarse = log.interval_s() >= COARSE_S;
    double share = coarse ? LEFT_STANDBY_COARSE : LEFT_STANDBY;
    double steps_kW = Math.min(2 * own.resolution(), LEFT_STANDBY * rise_kW);
    double leaves_kW = standby_kW + Math.max(share * rise_kW, steps_kW);
    List<Cycle> runs = new ArrayList<>();
    int first = -1;
    for (int row = 0; row <= log.rows(); row++) {
      boolean runs_on = row < log.rows() && own.value(row) > leaves_kW;
      if (first >= 0 && (!runs_on || !log.follows(row))) {
        add(runs, own, first, row - 1, standby_kW, running_kW);
        first = -1;
      }
      first = runs_on && first < 0 ? row : first;
    }
    return runs;
  }

  private void add(
      List<Cycle> runs, Column own, int first, int last, double standby_kW, double running_kW) {
    double[] power_kW = Arrays.copyOfRange(own.values(), first, last + 1);
    double[] sorted = power_kW.clone();
    Arrays.sort(sorted);
    double usual_kW = at(Arrays.copyOfRange(sorted, sorted.length / 2, sorted.length), 0.5);
    boolean partial = power_kW.length < 3 && log.interval_s() >= COARSE_S;
    double plateau_kW = partial ? Math.max(usual_kW, running_kW) : usual_kW;
    double rise_kW = Math.max(1e-6, plateau_kW - standby_kW);
    double energy_kWh = 0;
    double running_s = 0;
    for (int row = first; row <= last; row++) {
      double span_s = log.span_s(row);
      energy_kWh += own.value(row) * span_s / 3600;
      running_s += span_s * Math.min(1, (own.value(row) - standby_kW) / rise_kW);
    }
    boolean reaches =
        sorted[sorted.length - 1] - standby_kW >= REACHES * (running_kW - standby_kW)
            || log.interval_s() >= COARSE_S;
    if (!reaches || running_s < Math.max(BLIP_S, 0.1 * log.interval_s())) {
      return;
    }
    double firstShare = Math.min(1, (own.value(first) - standby_kW) / rise_kW);
    double lastShare = Math.min(1, (own.value(last) - standby_kW) / rise_kW);
    double start_s = log.end_s(first) - firstShare * log.span_s(first);
    double end_s =
        first == last ? start_s + running_s : log.at_s(last) + lastShare * log.span_s(last);
    boolean cut =
        first == 0
            || last + 1 == log.rows()
            || !log.follows(first)
            || !log.follows(last + 1)
            || Double.isNaN(own.value(first - 1))
            || Double.isNaN(own.value(last + 1));
    runs.add(
        new Cycle(
            first,
            last,
            start_s,
            end_s,
            running_s / 3600,
            energy_kWh,
            plateau_kW,
            cut,
            confidence(running_s, plateau_kW / running_kW)));
  }

  /** Less sure the fewer readings a run fills, and the further its power is from the usual one. */
  private double confidence(double running_s, double share) {
    double readings = running_s / log.interval_s();
    double seen = 1 - 0.5 * Math.exp(-readings);
    double alike = Math.exp(-0.5 * Math.pow(Math.log(Math.max(1e-3, share)) / 0.7, 2));
    return seen * alike;
  }
}
