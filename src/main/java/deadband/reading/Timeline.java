package deadband.reading;

import deadband.document.Problem.Kind;
import deadband.document.Span;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntFunction;

/**
 * The step of a day file and where each of its rows falls in it.
 *
 * <p>The step is the commonest time between one row and the next; rows that do not keep to it are
 * refused, each with its line, unless they only leave out whole steps and gaps are to be filled.
 */
final class Timeline {

  private static final int SECONDS_PER_HOUR = 3600;

  /** Between written times of day, more than this is a step back over midnight, not forward. */
  private static final long HALF_A_DAY_S = Stamp.SECONDS_PER_DAY / 2;

  private final DayTable table;
  private final Stamp.Kind kind;
  private final Gaps gaps;
  private final Problems problems;
  private final IntFunction<Span> timeAtLine;

  private Timeline(
      DayTable table, Stamp.Kind kind, Gaps gaps, Problems problems, IntFunction<Span> timeAtLine) {
    this.table = table;
    this.kind = kind;
    this.gaps = gaps;
    this.problems = problems;
    this.timeAtLine = timeAtLine;
  }

  /** What the times come to. */
  static final class Steps {
    private final int step_s;
    private final int[] place;

    Steps(int step_s, int[] place) {
      this.step_s = step_s;
      this.place = place;
    }

    /** The step [s]. */
    int step_s() {
      return step_s;
    }

    /** The step a row falls in; of a row that is refused, that of the one before. */
    int place(int row) {
      return place[row];
    }

    /** The row of a step, or the first one after it. */
    int rowAt(int step) {
      int found = Arrays.binarySearch(place, step);
      return found >= 0 ? found : -found - 1;
    }

    /** Steps from the first row to the last, both included. */
    int length() {
      return place[place.length - 1] + 1;
    }
  }

  /**
   * Finds the step, and adds what is wrong with the times.
   *
   * @param table at least two rows
   * @param timeAtLine where the time of a line stands
   */
  static Steps of(
      DayTable table, Stamp.Kind kind, Gaps gaps, Problems problems, IntFunction<Span> timeAtLine) {
    return new Timeline(table, kind, gaps, problems, timeAtLine).steps();
  }

  private Steps steps() {
    long step_s = commonest_s();
    if (step_s <= 0 || step_s > SECONDS_PER_HOUR || SECONDS_PER_HOUR % step_s != 0) {
      unfit(step_s);
      return new Steps(SECONDS_PER_HOUR, new int[table.rows()]);
    }
    return new Steps((int) step_s, places((int) step_s));
  }

  private void unfit(long step_s) {
    if (step_s <= 0) {
      problems.add(
          Kind.TIME_TWICE, "times that do not increase", "a later time in each row", time(1));
      return;
    }
    problems.add(
        Kind.STEP_UNFIT,
        "steps of " + words(step_s),
        "steps of whole seconds that divide an hour: 1, 5 or 15 min",
        time(1));
  }

  /** The time by which most rows are apart; of equally common ones the shortest. */
  private long commonest_s() {
    Map<Long, Integer> times = new HashMap<>();
    long commonest_s = 0;
    int most = 0;
    for (int row = 1; row < table.rows(); row++) {
      long apart_s = apart_s(row - 1, row);
      int count = apart_s > 0 ? times.merge(apart_s, 1, Integer::sum) : 0;
      if (count > most || (count == most && count > 0 && apart_s < commonest_s)) {
        most = count;
        commonest_s = apart_s;
      }
    }
    return commonest_s;
  }

  /** From one row to a later one; negative where time goes back. */
  private long apart_s(int from, int to) {
    long apart_s = table.time_s(to) - table.time_s(from);
    if (kind != Stamp.Kind.CLOCK) {
      return apart_s;
    }
    long forward_s = Math.floorMod(apart_s, (long) Stamp.SECONDS_PER_DAY);
    return forward_s > HALF_A_DAY_S ? forward_s - Stamp.SECONDS_PER_DAY : forward_s;
  }

  private int[] places(int step_s) {
    int[] place = new int[table.rows()];
    int last = 0;
    boolean good = true;
    for (int row = 1; row < table.rows() && !problems.isFull(); row++) {
      long apart_s = apart_s(last, row);
      boolean forward = apart_s > 0;
      place[row] = place[last];
      if (forward) {
        place[row] += forward(row, last, apart_s, step_s);
        last = row;
      } else if (good) {
        back(row, last, apart_s);
      }
      // of rows that go on behind the last good time only the first is entered
      good = forward;
    }
    return place;
  }

  /** The steps by which a row lies ahead. */
  private int forward(int row, int last, long apart_s, int step_s) {
    long steps = apart_s / step_s;
    if (apart_s % step_s != 0) {
      problems.add(
          Kind.STEP_IRREGULAR,
          words(apart_s) + " after line " + table.line(last),
          words(step_s) + " after it, as between the other rows",
          time(row));
    } else if (steps > 1 && !gaps.fills((int) Math.min(Integer.MAX_VALUE, steps - 1), step_s)) {
      gap(row, last, steps - 1, step_s);
    }
    return (int) Math.max(1, Math.min(steps, Integer.MAX_VALUE / 2));
  }

  private void gap(int row, int last, long missing, int step_s) {
    problems.add(
        Kind.TIME_GAP,
        (missing == 1 ? "one row" : missing + " rows")
            + " of "
            + words(step_s)
            + " missing after line "
            + table.line(last)
            + clockChange(missing * step_s),
        gaps.refuses()
            ? "a row for every step; or use --fill-gaps 5"
            : "a row for every step, or a gap of at most " + gaps.longest_min() + " min",
        time(row));
  }

  private void back(int row, int last, long apart_s) {
    if (apart_s == 0) {
      problems.add(
          Kind.TIME_TWICE,
          "the same time as in line " + table.line(last),
          "each time once",
          time(row));
      return;
    }
    problems.add(
        Kind.TIME_BACKWARDS,
        words(-apart_s) + " before line " + table.line(last) + clockChange(-apart_s),
        "a later time in each row",
        time(row));
  }

  /** A hint where the jump looks like the change to or from summer time. */
  private String clockChange(long jump_s) {
    boolean likely =
        kind == Stamp.Kind.LOCAL && Math.abs(jump_s - SECONDS_PER_HOUR) <= SECONDS_PER_HOUR / 4;
    return likely ? "; if the clocks changed here, write each time with its offset" : "";
  }

  private Span time(int row) {
    return timeAtLine.apply(table.line(row));
  }

  private static String words(long time_s) {
    if (time_s % SECONDS_PER_HOUR == 0) {
      return time_s / SECONDS_PER_HOUR + " h";
    }
    return time_s % 60 == 0 ? time_s / 60 + " min" : String.format(Locale.ROOT, "%d s", time_s);
  }
}
