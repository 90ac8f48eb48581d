package deadband.reading;

import deadband.dayrun.Profile;
import deadband.dayrun.StepLength;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.meterlog.Meaning;
import deadband.meterlog.MeterLog;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A meter log as a day to be simulated: the surplus that the grid's power shows, or PV and house,
 * with heat pump, immersion heater, vehicle and battery taken out, since the simulation adds its
 * own.
 */
public final class MeterDay {

  private static final List<Meaning> TAKEN_OUT =
      List.of(Meaning.HEAT_PUMP, Meaning.IMMERSION, Meaning.VEHICLE);

  /** So much less than its parts a sum may show by the meters' errors [kW]. */
  private static final double LESS_KW = 0.2;

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

  /** Whether a log shows power of the grid or the house: then it is no day file. */
  public static boolean isShown(LogReading reading) {
    return reading instanceof LogReading.Read read
        && Stream.of(Meaning.GRID, Meaning.IMPORT, Meaning.EXPORT, Meaning.HOUSE)
            .anyMatch(read.log()::has);
  }

  /** What is taken out of the grid's power, in words. */
  public static String says(LogReading.Read read) {
    List<String> out = new ArrayList<>();
    for (Meaning meaning : Meaning.values()) {
      boolean stored = meaning == Meaning.BATTERY && read.log().has(Meaning.GRID);
      if ((TAKEN_OUT.contains(meaning) || stored) && read.log().has(meaning)) {
        out.add(meaning.says());
      }
    }
    return "surplus from "
        + (read.log().has(Meaning.GRID) ? "the grid's power" : "the power of PV and house")
        + (out.isEmpty() ? "" : ", without " + String.join(", ", out));
  }

  private ProfileReading profile(Set<Meaning> needed, Gaps gaps) {
    boolean grid = log.has(Meaning.GRID);
    if (!grid && !(log.has(Meaning.PV) && log.has(Meaning.HOUSE))) {
      return refused(
          log.has(Meaning.IMPORT)
              ? "import without export: the surplus cannot be seen"
              : log.has(Meaning.EXPORT)
                  ? "export without import: what was short cannot be seen"
                  : "the house's power without PV: the surplus cannot be seen",
          "import and export, the grid's power with its sign, or PV and house");
    }
    for (Meaning meaning : Meaning.values()) {
      boolean included = grid || meaning != Meaning.BATTERY;
      if (included && needed.contains(meaning) && !log.has(meaning)) {
        return refused(
            "the power of " + (grid ? "the grid" : "the house") + ", and no " + meaning.says(),
            "a column for it, to be taken out, since the simulation adds its own; or surplus_kW,"
                + " logged without it");
      }
    }
    if (!grid && isBeforeLoads()) {
      return refused(
          "a house that takes less than the heat pump alone",
          "the power of the whole house, or house_kW without a column of the heat pump");
    }
    int step_s = log.interval_s();
    if (!log.regular() || step_s > 3600 || 3600 % step_s != 0) {
      return refused(
          "rows that keep no step that divides an hour", "rows every 1, 5, 15 or 60 min");
    }
    double[] shown_kW = surplus_kW();
    int rows = log.rows();
    while (rows > 1 && Double.isNaN(shown_kW[rows - 1])) {
      // the last reading of a counter ends the row before it
      rows--;
    }
    int length = (int) ((log.end_s(rows - 1) - log.at_s(0)) / step_s);
    double[] surplus_kW = new double[length];
    Arrays.fill(surplus_kW, Double.NaN);
    for (int row = 0; row < rows; row++) {
      int step = (int) ((log.at_s(row) - log.at_s(0)) / step_s);
      surplus_kW[Math.min(length - 1, step)] = shown_kW[row];
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

  /** Whether the house's power cannot hold that of the heat pump. */
  private boolean isBeforeLoads() {
    double[] rest_kW = new double[log.rows()];
    add(rest_kW, Meaning.HOUSE, 1);
    TAKEN_OUT.forEach(meaning -> add(rest_kW, meaning, -1));
    return Arrays.stream(rest_kW).filter(kW -> kW < -LESS_KW).count() > rest_kW.length / 100;
  }

  private double[] surplus_kW() {
    double[] surplus_kW = new double[log.rows()];
    if (log.has(Meaning.GRID)) {
      add(surplus_kW, Meaning.GRID, -1);
      add(surplus_kW, Meaning.BATTERY, -1);
    } else {
      add(surplus_kW, Meaning.PV, 1);
      add(surplus_kW, Meaning.HOUSE, -1);
    }
    TAKEN_OUT.forEach(meaning -> add(surplus_kW, meaning, 1));
    return surplus_kW;
  }

  private void add(double[] values, Meaning meaning, int sign) {
    log.column(meaning)
        .ifPresent(c -> Arrays.setAll(values, row -> values[row] + sign * c.value(row)));
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
