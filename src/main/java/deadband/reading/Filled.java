package deadband.reading;

import java.util.Arrays;
import java.util.BitSet;
import java.util.function.IntConsumer;

/** The columns of a day file step by step, with what is missing in them filled. */
final class Filled {

  private final DayTable table;
  private final Timeline.Steps steps;
  private final Gaps gaps;
  private final BitSet filled = new BitSet();

  Filled(DayTable table, Timeline.Steps steps, Gaps gaps) {
    this.table = table;
    this.steps = steps;
    this.gaps = gaps;
  }

  /** Steps in which something was filled. */
  int count() {
    return filled.cardinality();
  }

  /**
   * A column of powers: a gap holds what went before.
   *
   * @param unfillable told the row at which a gap stands that is too long, or nothing before it
   */
  double[] held(int column, IntConsumer unfillable) {
    double[] values = placed(column);
    int missing = 0;
    for (int step = 0; step < values.length; step++) {
      missing = Double.isNaN(values[step]) ? missing + 1 : 0;
      if (missing > 0) {
        if (step == 0 || !gaps.fills(missing, steps.step_s())) {
          unfillable.accept(steps.rowAt(step));
          return values;
        }
        values[step] = values[step - 1];
        filled.set(step);
      }
    }
    return values;
  }

  /** A column of draw-offs: nothing is drawn in a gap. */
  double[] undrawn(int column) {
    double[] values = placed(column);
    for (int step = 0; step < values.length; step++) {
      if (Double.isNaN(values[step])) {
        values[step] = 0;
        filled.set(step);
      }
    }
    return values;
  }

  private double[] placed(int column) {
    double[] values = new double[steps.length()];
    Arrays.fill(values, Double.NaN);
    for (int row = 0; row < table.rows(); row++) {
      values[steps.place(row)] = table.value(column, row);
    }
    return values;
  }
}
