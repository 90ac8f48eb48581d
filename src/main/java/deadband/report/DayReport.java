package deadband.report;

import static deadband.report.JsonForm.COUNT;
import static deadband.report.JsonForm.NUMBER;
import static deadband.report.JsonForm.TEXT;

import deadband.dayrun.Result;
import deadband.provenance.Assumption;
import deadband.report.JsonForm.Members;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * One day run, or a year of them, as a note to read or as JSON.
 *
 * @param file name of the setup file
 * @param reference name of the job; empty where it is missing
 * @param day what was run, such as {@code clear}
 * @param date the day's date, or the first of the year's
 * @param step_min length of a step [min]
 * @param result what it came to
 * @param assumptions the defaults used
 */
public record DayReport(
    String file,
    Optional<String> reference,
    String day,
    String date,
    double step_min,
    Result result,
    List<Assumption> assumptions) {

  private static final String CAUTION =
      "A simulation is arithmetic on the values entered, not a measurement, and proves nothing about"
          + " scalding or Legionella; heat is one control among several. Local codes and the"
          + " equipment's own instructions take precedence.";

  /** Version of the JSON format. */
  public static final int VERSION = 2;

  /** A report, and the version of the tool. */
  private record Written(DayReport report, String tool) {}

  private static final JsonForm<Written> FORM =
      JsonReport.<Written>head(VERSION, Written::tool, written -> written.report.file)
          .and(
              new Members<DayReport>()
                  .and("reference", TEXT.orNull(), DayReport::reference)
                  .and("day", TEXT, DayReport::day)
                  .and("date", TEXT, DayReport::date)
                  .and("step_min", NUMBER, DayReport::step_min)
                  .and("steps", COUNT, report -> Math.toIntExact(report.result.steps()))
                  .and(DayForms.RESULT, DayReport::result)
                  .and("assumptions", JsonReport.ASSUMPTIONS, DayReport::assumptions),
              Written::report)
          .form();

  /** The object, indented, without a line end. */
  public String json(String tool) {
    return FORM.written(new Written(this, tool), true);
  }

  /** The JSON Schema of these objects, indented, without a line end. */
  public static String schema() {
    return JsonForm.schema("simulation", VERSION, List.of(FORM));
  }

  /** The note, ending in a line end. */
  public String text(Layout layout) {
    StringBuilder text = new StringBuilder();
    text.append(layout.spread(reference.orElse("(no reference)"), day + ", " + date));
    text.append(
        layout.spread(file, result.steps() + " steps of " + Words.number(step_min) + " min"));
    text.append('\n');
    text.append(layout.entry("relay", relay()));
    text.append(layout.entry("heat pump", heatPump()));
    text.append(layout.entry("runs", runs()));
    text.append(layout.entry("immersion", DayWords.kWh(result.immersion_kWh()) + cutOut()));
    if (result.backup_kWh() > 0) {
      text.append(layout.entry("back-up", DayWords.kWh(result.backup_kWh())));
    }
    text.append(layout.entry("grid", grid()));
    text.append(layout.entry("PV energy", pv()));
    text.append(layout.entry("tank", tank()));
    text.append(layout.entry("hygiene", hygiene()));
    text.append(layout.entry("hot water", hotWater()));
    text.append('\n');
    if (!assumptions.isEmpty()) {
      text.append(layout.entry("assumed", assumed()));
    }
    text.append(layout.entry("safety", CAUTION));
    return text.toString();
  }

  private String relay() {
    return result
        .cycles()
        .map(
            cycles ->
                Words.count(cycles.relayClosings(), "closure")
                    + ", at most "
                    + cycles.closingsInWorstHour()
                    + " in an hour")
        .orElse("the step is longer than the shortest delay: no closures are counted");
  }

  private String heatPump() {
    String starts =
        result
            .cycles()
            .map(
                cycles ->
                    Words.count(cycles.heatPumpStarts(), "start")
                        + ", at most "
                        + cycles.startsInWorstHour()
                        + " in an hour; ")
            .orElse("");
    return starts
        + DayWords.kWh(result.heatPump_kWh())
        + " for "
        + DayWords.kWh(result.heatPumpHeat_kWh())
        + " of heat, "
        + DayWords.kWh(result.heatPumpOnSurplus_kWh())
        + " of it on surplus";
  }

  private String runs() {
    return result.cycles().map(DayReport::runs).orElse("not counted");
  }

  private static String runs(Result.Cycles cycles) {
    if (cycles.longestRun_min().isEmpty()) {
      return "none";
    }
    return "shortest "
        + minutes(cycles.shortestRun_min())
        + ", median "
        + minutes(cycles.medianRun_min())
        + ", longest "
        + minutes(cycles.longestRun_min())
        + "; "
        + cycles.runsEndedByTimer()
        + " ended by the timer";
  }

  private static String minutes(OptionalDouble length_min) {
    return length_min.isPresent() ? Words.withUnit(length_min.getAsDouble(), "min") : "-";
  }

  private String cutOut() {
    return result.cutOutOpened() ? "; a cut-out opens and stays open until it is reset" : "";
  }

  private String grid() {
    return DayWords.kWh(result.import_kWh())
        + " imported, "
        + DayWords.kWh(result.importWhileOnSurplus_kWh())
        + " of it on surplus calls; "
        + DayWords.kWh(result.export_kWh())
        + " exported";
  }

  private String pv() {
    return DayWords.kWh(result.solarKept_kWh())
        + " into the tank, "
        + DayWords.kWh(result.solarHeat_kWh())
        + " of heat"
        + DayWords.curtailed(result);
  }

  private String tank() {
    return "at the top "
        + span(result.tankTop_C())
        + "; at the diverter's sensor "
        + span(result.tankSensor_C())
        + "; at the bottom "
        + span(result.tankBottom_C());
  }

  private static String span(Result.Span span) {
    return DayWords.tenths(span.min())
        + " to "
        + DayWords.tenths(span.max())
        + " °C, "
        + DayWords.tenths(span.end())
        + " at the end";
  }

  private String hygiene() {
    return Words.withUnit(result.minutes20to45(), "min")
        + " at 20 to 45 °C at the diverter's sensor; log reduction "
        + DayWords.tenths(result.logReductionTop())
        + " at the top, "
        + DayWords.tenths(result.logReductionBottom())
        + " at the bottom (conservative, counted to 8)";
  }

  private String hotWater() {
    return DayWords.tenths(result.coldDraw_L())
        + " L drawn off below 40 °C; "
        + DayWords.kWh(result.standingLoss_kWh())
        + " of standing loss";
  }

  private String assumed() {
    return assumptions.stream()
        .map(each -> each.pointer().dotted() + " " + Words.value(each.value()))
        .collect(Collectors.joining(", "));
  }
}
