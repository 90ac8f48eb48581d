package deadband.report;

import java.util.ArrayList;
import java.util.List;

/**
 * From a value to a height, and the round values to mark.
 *
 * @param least value at the foot
 * @param most value at the head
 * @param tick from one marked value to the next
 * @param head height of the head
 * @param foot height of the foot
 */
record ChartScale(double least, double most, double tick, double head, double foot) {

  private static final double[] ROUND = {1, 2, 5, 10};

  /** More marks than this crowd a panel. */
  private static final int MOST_TICKS = 6;

  /** A scale over a range, widened to marked values. */
  static ChartScale over(double least, double most, double head, double foot) {
    double tick = tick(Math.max(most - least, 1e-3) / MOST_TICKS);
    return new ChartScale(
        Math.floor(least / tick + 1e-9) * tick,
        Math.ceil(most / tick - 1e-9) * tick,
        tick,
        head,
        foot);
  }

  private static double tick(double atLeast) {
    double power = Math.pow(10, Math.floor(Math.log10(atLeast)));
    for (double round : ROUND) {
      if (round * power >= atLeast * (1 - 1e-9)) {
        return round * power;
      }
    }
    return 10 * power;
  }

  /** The height of a value; beyond the scale it stays at the edge. */
  double y(double value) {
    double within = Math.max(least, Math.min(most, value));
    return foot - (within - least) / (most - least) * (foot - head);
  }

  /** The values to mark, from the foot up. */
  List<Double> ticks() {
    List<Double> ticks = new ArrayList<>();
    long last = Math.round((most - least) / tick);
    for (long at = 0; at <= last; at++) {
      ticks.add(least + at * tick);
    }
    return ticks;
  }
}
