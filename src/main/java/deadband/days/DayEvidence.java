package deadband.days;

import deadband.dayrun.CycleRun;
import deadband.dayrun.Result;
import deadband.dayrun.TestDays;
import deadband.facts.Measure;
import deadband.provenance.Derived;
import deadband.setup.Setup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the day runs of a setup show, as quantities that a rule page may name: each with the day it
 * was seen on, such as {@code starts, clear day}.
 */
public final class DayEvidence {

  private static final double MINUTES_PER_HOUR = 60;

  private DayEvidence() {}

  /** The days of a setup; empty where it cannot be run, or is not to be. */
  public static Optional<TestDays> days(Setup setup, DayRuns runs) {
    return runs == DayRuns.none() ? Optional.empty() : model(setup).flatMap(runs::of);
  }

  /** Whether days have anything to tell of a setup; so too where it is not sure. */
  public static boolean concern(Setup setup) {
    return !DayModel.fits(setup).is(is -> !is) && !DayModel.callsHeatPump(setup).is(is -> !is);
  }

  /** The model of a setup; empty where it cannot be run, or there is nothing to run. */
  public static Optional<DayModel> model(Setup setup) {
    if (!DayModel.fits(setup).is(is -> is) || !DayModel.callsHeatPump(setup).is(is -> is)) {
      return Optional.empty();
    }
    Derived<DayModel> model = DayModel.of(setup);
    return model.isKnown() ? Optional.of(model.get()) : Optional.empty();
  }

  /** Every quantity that they show. */
  public static List<Measure> of(TestDays days) {
    List<Measure> measures = new ArrayList<>();
    add(measures, "clear day", days.clear());
    add(measures, "cloudy day", days.cloud());
    days.cycle().ifPresent(cycle -> add(measures, cycle));
    return List.copyOf(measures);
  }

  private static void add(List<Measure> measures, String day, Result result) {
    result
        .cycles()
        .ifPresent(
            cycles -> {
              measures.add(count("relay closures", day, cycles.relayClosings()));
              if (cycles.relayClosings() == 0) {
                measures.add(named("maximum counted", day, result.mostCounted_kW(), "kW"));
              }
              measures.add(
                  count("relay closures in the worst hour", day, cycles.closingsInWorstHour()));
              measures.add(count("starts", day, cycles.heatPumpStarts()));
              measures.add(count("starts in the worst hour", day, cycles.startsInWorstHour()));
              measures.add(count("runs ended by the timer", day, cycles.runsEndedByTimer()));
            });
    measures.add(energy("heat pump", day, result.heatPump_kWh()));
    measures.add(energy("immersion heater", day, result.immersion_kWh()));
    measures.add(energy("back-up heater", day, result.backup_kWh()));
    measures.add(energy("import", day, result.import_kWh()));
    measures.add(energy("import on surplus calls", day, result.importWhileOnSurplus_kWh()));
    measures.add(energy("exported", day, result.export_kWh()));
    measures.add(energy("curtailed", day, result.curtailed_kWh()));
    measures.add(energy("PV energy into the tank", day, result.solarKept_kWh()));
    warmWhenCalled(result)
        .ifPresent(
            each ->
                measures.add(named("tank temperature at calls without a start", day, each, "°C")));
    measures.add(named("time in the growth band", day, hours(result), "h"));
    measures.add(named("maximum at the top", day, result.tankTop_C().max(), "°C"));
    measures.add(named("maximum at the diverter's sensor", day, result.tankSensor_C().max(), "°C"));
  }

  /**
   * How warm the tank is whenever the relay is closed, on a day on which no closure starts a run.
   */
  private static OptionalDouble warmWhenCalled(Result result) {
    boolean called = result.cycles().filter(each -> each.relayClosings() > 0).isPresent();
    return called && result.heatPumpOnSurplus_kWh() == 0
        ? OptionalDouble.of(result.coolestWhenCalled_C())
        : OptionalDouble.empty();
  }

  public static double hours(Result result) {
    return result.minutes20to45() / MINUTES_PER_HOUR;
  }

  private static void add(List<Measure> measures, CycleRun cycle) {
    String day = "disinfection cycle";
    measures.add(named("log reduction at the top", day, cycle.result().logReductionTop(), ""));
    measures.add(
        named("log reduction at the bottom", day, cycle.result().logReductionBottom(), ""));
    measures.add(named("maximum at the top", day, cycle.result().tankTop_C().max(), "°C"));
    measures.add(named("maximum at the bottom", day, cycle.result().tankBottom_C().max(), "°C"));
    cycle
        .toTarget_min()
        .ifPresent(minutes -> measures.add(named("time to the target", day, minutes, "min")));
  }

  private static Measure count(String what, String day, int value) {
    return named(what, day, value, "");
  }

  private static Measure energy(String what, String day, double value_kWh) {
    return named(what, day, value_kWh, "kWh");
  }

  private static Measure named(String what, String day, double value, String unit) {
    return Measure.of(what + ", " + day, value, unit);
  }
}
