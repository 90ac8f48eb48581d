package deadband.dayrun;

import java.util.Arrays;
import java.util.OptionalDouble;

/** Lengths of compressor runs in steps, kept as how many there were of each length. */
final class Runs {
  private final StepLength step;
  private int[] ofLength;
  private int count;
  private int longest;

  Runs(StepLength step) {
    this.step = step;
    ofLength = new int[step.perDay() + 1];
  }

  /** Notes a run that ended. Only a run longer than any before and than a day makes room anew. */
  void ended(int steps) {
    if (steps >= ofLength.length) {
      ofLength = Arrays.copyOf(ofLength, 2 * steps);
    }
    ofLength[steps]++;
    count++;
    longest = Math.max(longest, steps);
  }

  OptionalDouble shortest_min() {
    return count == 0 ? OptionalDouble.empty() : OptionalDouble.of(minutes(ranked(0)));
  }

  /** The middle run, or the mean of the two in the middle. */
  OptionalDouble median_min() {
    if (count == 0) {
      return OptionalDouble.empty();
    }
    double lower = minutes(ranked((count - 1) / 2));
    return OptionalDouble.of((lower + minutes(ranked(count / 2))) / 2);
  }

  /** The longest run, one still going on for so many steps included; 0 for none. */
  OptionalDouble longest_min(int goingOn) {
    int most = Math.max(longest, goingOn);
    return most == 0 ? OptionalDouble.empty() : OptionalDouble.of(minutes(most));
  }

  /** Length of the run that stands at a place, counted from 0, when all are put in order. */
  private int ranked(int place) {
    int steps = 0;
    for (int before = ofLength[0]; before <= place; before += ofLength[steps]) {
      steps++;
    }
    return steps;
  }

  private double minutes(int steps) {
    return steps * step.minutes();
  }
}
