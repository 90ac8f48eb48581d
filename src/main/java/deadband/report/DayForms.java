package deadband.report;

import static deadband.report.JsonForm.COUNT;
import static deadband.report.JsonForm.FLAG;
import static deadband.report.JsonForm.NUMBER;

import deadband.dayrun.CycleRun;
import deadband.dayrun.Result;
import deadband.dayrun.TestDays;
import deadband.report.JsonForm.Members;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** What day runs come to, as JSON: energies to 1 Wh, temperatures to 0.01 K. */
final class DayForms {

  private static final JsonForm<Result.Span> SPAN =
      new Members<Result.Span>()
          .and("min", NUMBER, span -> to(2, span.min()))
          .and("max", NUMBER, span -> to(2, span.max()))
          .and("end", NUMBER, span -> to(2, span.end()))
          .form()
          .named("span");

  /** The members of one result; counts are null where the step is too long for them. */
  static final Members<Result> RESULT = result();

  private static final JsonForm<CycleRun> CYCLE =
      new Members<CycleRun>()
          .and("held", FLAG, CycleRun::held)
          .and("heldShare", NUMBER, cycle -> to(2, cycle.heldShare()))
          .and("toTarget_min", NUMBER.orNull(), cycle -> boxed(cycle.toTarget_min()))
          .and(RESULT, CycleRun::result)
          .form()
          .named("cycle");

  private static final JsonForm<Result> DAY = RESULT.form().named("day");

  /** The example days of a judgement, or null. */
  static final JsonForm<Optional<TestDays>> DAYS =
      new Members<TestDays>()
          .and("clear", DAY, TestDays::clear)
          .and("cloud", DAY, TestDays::cloud)
          .and("cycle", CYCLE.orNull(), TestDays::cycle)
          .form()
          .described("a clear day, a cloudy one and a disinfection cycle; null where not run")
          .named("exampleDays")
          .orNull();

  private DayForms() {}

  private static Members<Result> result() {
    Members<Result> result = new Members<>();
    count(result, "relayClosures", Result.Cycles::relayClosings);
    count(result, "closuresInWorstHour", Result.Cycles::closingsInWorstHour);
    count(result, "heatPumpStarts", Result.Cycles::heatPumpStarts);
    count(result, "startsInWorstHour", Result.Cycles::startsInWorstHour);
    count(result, "runsEndedByTimer", Result.Cycles::runsEndedByTimer);
    run(result, "shortestRun_min", Result.Cycles::shortestRun_min);
    run(result, "medianRun_min", Result.Cycles::medianRun_min);
    run(result, "longestRun_min", Result.Cycles::longestRun_min);
    number(result, "heatPump_kWh", 3, Result::heatPump_kWh);
    number(result, "heatPumpOnSurplus_kWh", 3, Result::heatPumpOnSurplus_kWh);
    number(result, "heatPumpHeat_kWh", 3, Result::heatPumpHeat_kWh);
    number(result, "immersion_kWh", 3, Result::immersion_kWh);
    number(result, "backup_kWh", 3, Result::backup_kWh);
    number(result, "import_kWh", 3, Result::import_kWh);
    number(result, "importWhileOnSurplus_kWh", 3, Result::importWhileOnSurplus_kWh);
    number(result, "export_kWh", 3, Result::export_kWh);
    number(result, "pvIntoTank_kWh", 3, Result::solarKept_kWh);
    number(result, "heatFromPV_kWh", 3, Result::solarHeat_kWh);
    result.and("tankTop_C", SPAN, Result::tankTop_C);
    result.and("tankSensor_C", SPAN, Result::tankSensor_C);
    result.and("tankBottom_C", SPAN, Result::tankBottom_C);
    number(result, "at20to45_min", 3, Result::minutes20to45);
    number(result, "logReductionTop", 2, Result::logReductionTop);
    number(result, "logReductionBottom", 2, Result::logReductionBottom);
    number(result, "curtailed_kWh", 3, Result::curtailed_kWh);
    number(result, "drawnBelow40C_L", 1, Result::coldDraw_L);
    number(result, "standingLoss_kWh", 3, Result::standingLoss_kWh);
    number(result, "balanceError_kWh", 3, Result::balanceError_kWh);
    return result.and("cutOutOpened", FLAG, Result::cutOutOpened);
  }

  private static void count(
      Members<Result> result, String name, Function<Result.Cycles, Integer> count) {
    result.and(name, COUNT.orNull(), run -> run.cycles().map(count));
  }

  private static void run(
      Members<Result> result, String name, Function<Result.Cycles, OptionalDouble> length_min) {
    result.and(name, NUMBER.orNull(), run -> run.cycles().map(length_min).flatMap(DayForms::boxed));
  }

  private static void number(
      Members<Result> result, String name, int decimals, ToDoubleFunction<Result> value) {
    result.and(name, NUMBER, run -> to(decimals, value.applyAsDouble(run)));
  }

  private static Optional<Double> boxed(OptionalDouble value) {
    return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
  }

  private static double to(int decimals, double value) {
    double scale = Math.pow(10, decimals);
    return Math.rint(value * scale) / scale + 0.0;
  }
}
