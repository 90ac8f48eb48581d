package deadband.diagnosis;

import deadband.meterlog.Meaning;
import deadband.meterlog.MeterLog;
import deadband.setup.Entered;
import deadband.setup.Setup;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/** What a log shows of the settings in force, beside what is entered. */
final class InForce {

  private static final int FEWEST = 4;

  /** A difference that a meter and rounding do not explain. */
  private static final double DIFFERS = 0.15;

  private final Setup setup;
  private final MeterLog log;
  private final Cycles cycles;
  private final List<String> says = new ArrayList<>();

  private InForce(Setup setup, MeterLog log, Cycles cycles) {
    this.setup = setup;
    this.log = log;
    this.cycles = cycles;
  }

  /** What differs or shows, in words, by runs that are read beside the settings. */
  static List<String> of(Setup setup, MeterLog log, Cycles cycles, RunReader read) {
    if (cycles.count() < FEWEST) {
      return List.of();
    }
    InForce inForce = new InForce(setup, log, cycles);
    inForce.input();
    inForce.timers();
    inForce.thresholds(read);
    return inForce.says;
  }

  private void input() {
    Entered<Double> entered = setup.heatPump().hotWaterInput_kW();
    boolean fine = log.has(Meaning.HEAT_PUMP) && log.interval_s() <= 300;
    if (!entered.isEntered() || !fine) {
      return;
    }
    double seen_kW = cycles.running_kW();
    double entered_kW = entered.optional().orElse(seen_kW);
    if (Math.abs(seen_kW - entered_kW) > DIFFERS * entered_kW) {
      says.add(
          String.format(
              Locale.ROOT,
              "power input: %.1f kW in the log, %.1f kW entered (%s)",
              seen_kW,
              entered_kW,
              entered.pointer().dotted()));
    }
  }

  /** The shortest runs and pauses bound the timers from above. */
  private void timers() {
    double[] runs =
        cycles.list().stream().filter(c -> !c.cut()).mapToDouble(Cycle::run_min).toArray();
    double[] pauses = cycles.pauses_min().stream().mapToDouble(Double::doubleValue).toArray();
    timer("run", runs, setup.heatPump().minimumRun_min());
    timer("pause", pauses, setup.heatPump().minimumOff_min());
  }

  private void timer(String what, double[] lengths_min, Entered<Double> entered) {
    if (lengths_min.length < FEWEST || !entered.isEntered()) {
      return;
    }
    double resolution_min = log.interval_s() / 60.0;
    double shortest = low(lengths_min);
    double timer = entered.optional().orElse(0.0);
    if (shortest + resolution_min < timer) {
      says.add(
          String.format(
              Locale.ROOT,
              "shortest %s: %.0f min (within %.1f min), below the %.0f min entered (%s)",
              what,
              shortest,
              resolution_min,
              timer,
              entered.pointer().dotted()));
    }
  }

  private static double low(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 10];
  }

  private void thresholds(RunReader read) {
    List<Trigger> triggers = read.triggers();
    List<Ending> endings = read.endings();
    Surplus.of(log, cycles)
        .ifPresent(
            surplus_kW -> {
              threshold(
                  "starts by the relay",
                  surplus_kW,
                  of(triggers, EnumSet.of(Trigger.RELAY, Trigger.BELOW_START), Cycle::first),
                  setup.relay().start_kW());
              threshold(
                  "stops by the relay",
                  surplus_kW,
                  of(endings, EnumSet.of(Ending.GAP, Ending.SURPLUS_FELL), Cycle::last),
                  setup.relay().stop_kW());
            });
  }

  /** The rows of the runs that are of some kinds. */
  private <K extends Enum<K>> IntStream of(List<K> kinds, Set<K> such, ToIntFunction<Cycle> row) {
    return IntStream.range(0, cycles.count())
        .filter(index -> such.contains(kinds.get(index)))
        .map(index -> row.applyAsInt(cycles.list().get(index)));
  }

  private void threshold(
      String what, double[] surplus_kW, IntStream rowsOf, Entered<Double> entered) {
    int rows = (int) Math.max(1, Math.round(120.0 / log.interval_s()));
    double[] at =
        rowsOf
            .mapToDouble(row -> mean(surplus_kW, row - rows, row))
            .filter(Double::isFinite)
            .sorted()
            .toArray();
    if (at.length < FEWEST) {
      return;
    }
    String setting =
        entered.isEntered()
            ? String.format(
                Locale.ROOT,
                " (%s %.1f kW)",
                entered.pointer().dotted(),
                Values.tenths(entered.optional().orElse(0.0)))
            : "";
    says.add(
        String.format(
            Locale.ROOT,
            "surplus before heat pump and heater at %s: half of them from %.1f to %.1f kW%s",
            what,
            Values.tenths(at[at.length / 4]),
            Values.tenths(at[3 * at.length / 4]),
            setting));
  }

  private static double mean(double[] values, int from, int until) {
    return IntStream.range(Math.max(0, from), Math.min(values.length, until))
        .mapToDouble(row -> values[row])
        .filter(Double::isFinite)
        .average()
        .orElse(Double.NaN);
  }
}
