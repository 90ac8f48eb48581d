package deadband.diagnosis;

import deadband.meterlog.MeterLog;
import java.util.Arrays;
import java.util.stream.DoubleStream;

/** Rows of a log by time, and what values of some rows come to; a missing value is left out. */
record LogRows(MeterLog log) {

  int rows(double minutes) {
    return (int) Math.max(1, Math.round(60 * minutes / log.interval_s()));
  }

  /** The row that holds an instant, or the last one before it. */
  int row(double instant_s) {
    int low = 0;
    int high = log.rows() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (log.at_s(middle) <= instant_s) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  static double[] within(double[] values, int from, int until) {
    int begin = Math.max(0, from);
    int end = Math.min(values.length, until);
    return begin >= end
        ? new double[0]
        : Arrays.stream(values, begin, end).filter(Double::isFinite).toArray();
  }

  /** The value below which so great a share of them lies. */
  static double at(double[] values, double share) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted.length == 0 ? Double.NaN : sorted[(int) (share * (sorted.length - 1))];
  }

  static double mean(double[] values, int from, int until) {
    return DoubleStream.of(within(values, from, until)).average().orElse(Double.NaN);
  }

  static double median(double[] values) {
    double[] sorted = Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
    if (sorted.length == 0) {
      return Double.NaN;
    }
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }
}
