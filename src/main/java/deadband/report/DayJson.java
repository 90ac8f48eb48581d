package deadband.report;

import static deadband.report.JsonText.number;

import deadband.dayrun.CycleRun;
import deadband.dayrun.Result;
import deadband.dayrun.TestDays;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.core.JsonGenerator;

/** What day runs come to, as JSON: energies to 1 Wh, temperatures to 0.01 K. */
final class DayJson {

  private final JsonGenerator json;

  DayJson(JsonGenerator json) {
    this.json = json;
  }

  /** The days of a judgement; null where there are none. */
  void days(Optional<TestDays> days) {
    json.writeName("days");
    if (days.isEmpty()) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    result("clear", days.get().clear());
    result("cloud", days.get().cloud());
    json.writeName("cycle");
    days.get().cycle().ifPresentOrElse(this::cycle, json::writeNull);
    json.writeEndObject();
  }

  private void cycle(CycleRun cycle) {
    json.writeStartObject();
    json.writeBooleanProperty("held", cycle.held());
    number(json, "heldShare", to(2, cycle.heldShare()));
    optional("toTarget_min", cycle.toTarget_min());
    fields(cycle.result());
    json.writeEndObject();
  }

  /** A member that holds one result. */
  void result(String name, Result result) {
    json.writeName(name);
    json.writeStartObject();
    fields(result);
    json.writeEndObject();
  }

  /** The members of a result; counts are null where no count could be trusted. */
  void fields(Result result) {
    cycles(result.cycles());
    energy("heatPump_kWh", result.heatPump_kWh());
    energy("heatPumpOnSurplus_kWh", result.heatPumpOnSurplus_kWh());
    energy("heatPumpHeat_kWh", result.heatPumpHeat_kWh());
    energy("immersion_kWh", result.immersion_kWh());
    energy("backup_kWh", result.backup_kWh());
    energy("import_kWh", result.import_kWh());
    energy("importWhileOnSurplus_kWh", result.importWhileOnSurplus_kWh());
    energy("export_kWh", result.export_kWh());
    energy("solarKept_kWh", result.solarKept_kWh());
    energy("solarHeat_kWh", result.solarHeat_kWh());
    span("tankTop_C", result.tankTop_C());
    span("tankSensor_C", result.tankSensor_C());
    span("tankBottom_C", result.tankBottom_C());
    number(json, "minutes20to45", result.minutes20to45());
    number(json, "logReductionTop", to(2, result.logReductionTop()));
    number(json, "logReductionBottom", to(2, result.logReductionBottom()));
    energy("curtailed_kWh", result.curtailed_kWh());
    number(json, "coldDraw_L", to(1, result.coldDraw_L()));
    energy("standingLoss_kWh", result.standingLoss_kWh());
    energy("balanceError_kWh", result.balanceError_kWh());
    json.writeBooleanProperty("cutOutOpened", result.cutOutOpened());
  }

  private void cycles(Optional<Result.Cycles> cycles) {
    count("relayClosings", cycles.map(Result.Cycles::relayClosings));
    count("closingsInWorstHour", cycles.map(Result.Cycles::closingsInWorstHour));
    count("heatPumpStarts", cycles.map(Result.Cycles::heatPumpStarts));
    count("startsInWorstHour", cycles.map(Result.Cycles::startsInWorstHour));
    count("runsEndedByTimer", cycles.map(Result.Cycles::runsEndedByTimer));
    optional("shortestRun_min", run(cycles.map(Result.Cycles::shortestRun_min)));
    optional("medianRun_min", run(cycles.map(Result.Cycles::medianRun_min)));
    optional("longestRun_min", run(cycles.map(Result.Cycles::longestRun_min)));
  }

  private static OptionalDouble run(Optional<OptionalDouble> length_min) {
    return length_min.orElse(OptionalDouble.empty());
  }

  private void count(String name, Optional<Integer> count) {
    json.writeName(name);
    count.ifPresentOrElse(json::writeNumber, json::writeNull);
  }

  private void optional(String name, OptionalDouble value) {
    if (value.isPresent()) {
      number(json, name, value.getAsDouble());
    } else {
      json.writeNullProperty(name);
    }
  }

  private void energy(String name, double value_kWh) {
    number(json, name, to(3, value_kWh));
  }

  private void span(String name, Result.Span span) {
    json.writeName(name);
    json.writeStartObject();
    number(json, "min", to(2, span.min()));
    number(json, "max", to(2, span.max()));
    number(json, "end", to(2, span.end()));
    json.writeEndObject();
  }

  private static double to(int decimals, double value) {
    double scale = Math.pow(10, decimals);
    return Math.rint(value * scale) / scale + 0.0;
  }
}
