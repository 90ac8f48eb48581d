package deadband.reading;

import deadband.dayrun.Profile;
import deadband.dayrun.StepLength;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.meterlog.Column;
import deadband.meterlog.Meaning;
import deadband.meterlog.MeterLog;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A meter log as a day to be simulated: the surplus that the grid's power shows, with heat pump,
 * immersion heater, vehicle and battery taken out, since the simulation adds its own.
 */
public final class MeterDay {

  private static final List<Meaning> TAKEN_OUT =
      List.of(Meaning.HEAT_PUMP, Meaning.IMMERSION, Meaning.VEHICLE);

  private final LogReading.Read read;
  private final MeterLog log;

  private MeterDay(LogReading.Read read) {
    this.read = read;
    this.log = read.log();
  }

  /**
   * The profile of a log.
   *
   * @param needed what must be in the log, because the home has it and the grid's power holds it
   */
  public static ProfileReading of(LogReading.Read read, Set<Meaning> needed, Gaps gaps) {
    return new MeterDay(read).profile(needed, gaps);
  }

  /** Whether a log shows the grid's power: then it is read as a meter log, not as a day file. */
  public static boolean isShown(LogReading reading) {
    return reading instanceof LogReading.Read read && read.log().has(Meaning.GRID);
  }

  /** What is taken out of the grid's power, in words. */
  public static String says(LogReading.Read read) {
    List<String> out = new ArrayList<>();
    for (Meaning meaning : Meaning.values()) {
      if ((TAKEN_OUT.contains(meaning) || meaning == Meaning.BATTERY) && read.log().has(meaning)) {
        out.add(meaning.says());
      }
    }
    return "surplus from the grid's power"
        + (out.isEmpty() ? "" : ", without " + String.join(", ", out));
  }

  private ProfileReading profile(Set<Meaning> needed, Gaps gaps) {
    for (Meaning meaning : Meaning.values()) {
      if (needed.contains(meaning) && !log.has(meaning)) {
        return refused(
            "the grid's power, and no " + meaning.says() + " beside it",
            "a column for it: the grid's power holds it, and the simulation would add it again");
      }
    }
    int step_s = log.interval_s();
    if (!log.regular() || step_s > 3600 || 3600 % step_s != 0) {
      return refused(
          "rows that keep no step that divides an hour", "rows every 1, 5, 15 or 60 min");
    }
    int length = (int) ((log.end_s(log.rows() - 1) - log.at_s(0)) / step_s);
    double[] surplus_kW = new double[length];
    Arrays.fill(surplus_kW, Double.NaN);
    Optional<double[]> shown = surplus_kW();
    for (int row = 0; row < log.rows(); row++) {
      int step = (int) ((log.at_s(row) - log.at_s(0)) / step_s);
      surplus_kW[Math.min(length - 1, step)] = shown.map(at(row)).orElse(Double.NaN);
    }
    int filled = filled(surplus_kW, gaps, step_s);
    if (filled < 0) {
      return refused(
          "gaps in the rows or their values", "a log without, or --fill-gaps with their length");
    }
    int start_s = (int) Math.floorMod(Math.round(log.hour(0) * 3600), 86_400L);
    Profile profile =
        Profile.ofSurplus(new StepLength(step_s), start_s, surplus_kW, new double[length]);
    return new ProfileReading.Read(
        read.name(), profile, Set.of(ProfileReading.Column.SURPLUS), filled);
  }

  private static java.util.function.Function<double[], Double> at(int row) {
    return values -> values[row];
  }

  private Optional<double[]> surplus_kW() {
    Optional<Column> grid = log.column(Meaning.GRID);
    if (grid.isEmpty()) {
      return Optional.empty();
    }
    double[] surplus_kW = grid.get().values();
    Arrays.setAll(surplus_kW, row -> -surplus_kW[row]);
    TAKEN_OUT.forEach(meaning -> log.column(meaning).ifPresent(c -> add(surplus_kW, c, 1)));
    log.column(Meaning.BATTERY).ifPresent(column -> add(surplus_kW, column, -1));
    return Optional.of(surplus_kW);
  }

  private static void add(double[] values, Column column, int sign) {
    Arrays.setAll(values, row -> values[row] + sign * column.value(row));
  }

  /** Fills short gaps with what went before; how many steps, or -1 where a gap is too long. */
  private static int filled(double[] values, Gaps gaps, int step_s) {
    int filled = 0;
    int missing = 0;
    for (int step = 0; step < values.length; step++) {
      if (!Double.isNaN(values[step])) {
        missing = 0;
        continue;
      }
      missing++;
      if (step == 0 || !gaps.fills(missing, step_s)) {
        return -1;
      }
      values[step] = values[step - 1];
      filled++;
    }
    return filled;
  }

  private ProfileReading refused(String found, String right) {
    Problem problem = Problem.of(Source.named(read.name()), Kind.NOT_READABLE, found, right);
    return new ProfileReading.Unreadable(read.name(), List.of(problem));
  }
}
