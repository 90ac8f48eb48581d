package deadband.diagnosis;

import deadband.meterlog.Column;
import deadband.meterlog.Meaning;
import deadband.meterlog.MeterLog;
import deadband.setup.Setup;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a log cannot show.
 *
 * @param says in words
 * @param hidesCycles whether short cycles may be hidden in it, so that counts are lower bounds and
 *     causes cannot be ranked by how the runs go
 * @param hidesSurplus whether a heater that is not in the log hides the surplus
 */
record CannotSee(List<String> says, boolean hidesCycles, boolean hidesSurplus) {

  /** Readings further apart than this do not show single runs [s]. */
  private static final int COARSE_S = 300;

  static CannotSee of(MeterLog log, Cycles cycles, Optional<Setup> setup, AsSet set) {
    List<String> says = new ArrayList<>();
    boolean coarse = isCoarse(log, set);
    double min = log.interval_s() / 60.0;
    if (coarse) {
      says.add(
          String.format(
              Locale.ROOT,
              "%s-minute readings hide cycles shorter than %s min; counts of runs and starts are"
                  + " lower bounds, and single starts and stops are not shown",
              Values.number(min),
              Values.number(2 * min)));
    }
    if (!log.has(Meaning.HEAT_PUMP)) {
      says.add("the heat pump is not metered by itself: " + cycles.how());
    }
    if (!log.has(Meaning.GRID)) {
      says.add(
          log.has(Meaning.IMPORT)
              ? "surplus: what is imported is in the log, not what is exported"
              : log.has(Meaning.EXPORT)
                  ? "surplus and import: what is exported is in the log, not what is imported"
                  : "surplus and import: the grid's power is not in the log");
    }
    boolean hidden = hidesSurplus(log, setup);
    if (hidden) {
      says.add("surplus: the immersion heater takes of it and is not in the log");
    }
    if (!log.has(Meaning.TANK)) {
      says.add("whether the tank warms: no tank temperature is in the log");
    }
    setup.ifPresent(s -> parts(log, s, says));
    for (Column column : log.columns()) {
      if (column.form() == Column.Form.COUNTER && column.resolution() > 0.3) {
        says.add(
            String.format(
                Locale.ROOT,
                "powers below %.1f kW of %s: its counter counts no finer",
                column.resolution(),
                column.heading().name()));
      }
    }
    return new CannotSee(List.copyOf(says), coarse, hidden);
  }

  /** Whether a run or pause that the settings allow can be shorter than two readings. */
  private static boolean isCoarse(MeterLog log, AsSet set) {
    double shortest_min = Math.min(set.cycle().run_min(), set.cycle().pause_min());
    return log.interval_s() > COARSE_S
        || (log.interval_s() > 60 && 60 * shortest_min < 2 * log.interval_s());
  }

  private static boolean hidesSurplus(MeterLog log, Optional<Setup> setup) {
    boolean fitted = setup.map(s -> s.immersion().power_kW().isEntered()).orElse(false);
    boolean absent = setup.map(s -> s.diverter().part().isFitted().says(false)).orElse(false);
    return fitted && !absent && !log.has(Meaning.IMMERSION);
  }

  private static void parts(MeterLog log, Setup setup, List<String> says) {
    if (setup.battery().capacity_kWh().isEntered() && !log.has(Meaning.BATTERY)) {
      says.add("what the battery gives and takes: it is not in the log");
    }
    if (setup.vehicleCharger().part().isFitted().says(true) && !log.has(Meaning.VEHICLE)) {
      says.add("what the vehicle charger takes: it is not in the log");
    }
  }
}
