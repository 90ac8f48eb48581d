package deadband.report;

import static deadband.report.JsonForm.COUNT;
import static deadband.report.JsonForm.FLAG;
import static deadband.report.JsonForm.NUMBER;
import static deadband.report.JsonForm.TEXT;

import deadband.diagnosis.Cause;
import deadband.diagnosis.Cycle;
import deadband.diagnosis.Cycles;
import deadband.diagnosis.Diagnosis;
import deadband.diagnosis.Ending;
import deadband.diagnosis.Feature;
import deadband.diagnosis.Observation;
import deadband.diagnosis.Prediction;
import deadband.diagnosis.Ranked;
import deadband.diagnosis.Trigger;
import deadband.diagnosis.Values;
import deadband.judging.Finding;
import deadband.meterlog.Column;
import deadband.meterlog.MeterLog;
import deadband.report.JsonForm.Members;
import deadband.setup.Change;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A diagnosis as a note to read or as JSON.
 *
 * @param file name of the setup file; empty without one
 * @param reference name of the job
 * @param diagnosis what was found
 * @param skipped rows of the logs that were left out, in words
 * @param findings what the rule book finds in the settings, ranked
 */
public record DiagnosisReport(
    String file,
    Optional<String> reference,
    Diagnosis diagnosis,
    List<String> skipped,
    List<Finding> findings) {

  /** A share below this is not worth a word. */
  private static final double LEAST_SHARE = 0.005;

  private static final int VERSION = 1;

  /** Causes below this share are not shown in the text. */
  private static final double WORTH_SHOWING = 0.03;

  private static final int MOST_SHOWN = 4;
  private static final int MOST_COMPARED = 5;

  static final String CAUTION =
      "A diagnosis ranks causes by what they would lead to; it proves none. Before work on site,"
          + " isolate and prove dead; local codes and the equipment's own instructions take"
          + " precedence, and electrical and unvented work is for licensed people.";

  private record Written(DiagnosisReport report, String tool) {}

  /** One thing seen, or predicted, under its name in JSON. */
  private record Seen(String what, String says, double value, String unit) {

    static Seen of(Feature feature, double value) {
      return new Seen(
          word(feature), feature.says(), value, feature.isShare() ? "" : feature.unit());
    }

    static Seen of(Trigger trigger, double share) {
      return new Seen("starts-" + trigger.word(), "starts by: " + trigger.says(), share, "");
    }

    static Seen of(Ending ending, double share) {
      return new Seen("stops-" + ending.word(), "stops by: " + ending.says(), share, "");
    }

    private static String word(Feature feature) {
      return feature.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  private record Listed(DiagnosisReport report, int index) {
    Cycle cycle() {
      return report.diagnosis.cycles().list().get(index);
    }
  }

  private record Place(DiagnosisReport report, int index) {
    Ranked ranked() {
      return report.diagnosis.causes().get(index);
    }
  }

  private static final JsonForm<List<Seen>> SEEN =
      new Members<Seen>()
          .and("what", TEXT, Seen::what)
          .and("says", TEXT, Seen::says)
          .and("value", NUMBER, seen -> to(3, seen.value))
          .and("unit", TEXT, Seen::unit)
          .form()
          .named("seen")
          .list();

  private static final JsonForm<MeterLog> LOG =
      new Members<MeterLog>()
          .and("name", TEXT, MeterLog::name)
          .and("from", TEXT, log -> log.clock(0).toString())
          .and("to", TEXT, DiagnosisReport::end)
          .and("interval_s", COUNT, MeterLog::interval_s)
          .and("rows", COUNT, MeterLog::rows)
          .and(
              "columns",
              new Members<Column>()
                  .and("name", TEXT, column -> column.heading().name())
                  .and("meaning", TEXT, column -> column.meaning().word())
                  .and("unit", TEXT, column -> column.heading().unit().word())
                  .and("form", TEXT, column -> column.form().says())
                  .and("remark", TEXT, Column::remark)
                  .and("missing", COUNT, Column::missing)
                  .form()
                  .named("column")
                  .list(),
              MeterLog::columns)
          .and(
              "gaps",
              new Members<MeterLog.Gap>()
                  .and("from", TEXT, gap -> gap.from().toString())
                  .and("to", TEXT, gap -> gap.to().toString())
                  .form()
                  .named("gap")
                  .list(),
              MeterLog::gaps)
          .form()
          .named("log");

  private static final JsonForm<DiagnosisReport> CYCLES =
      new Members<DiagnosisReport>()
          .and("count", COUNT, report -> report.diagnosis.cycles().count())
          .and("how", TEXT, report -> report.diagnosis.cycles().how())
          .and(
              "perDay",
              new Members<Cycles.PerDay>()
                  .and("date", TEXT, day -> day.date().toString())
                  .and("starts", COUNT, Cycles.PerDay::starts)
                  .and("hours", NUMBER, day -> to(2, day.hours()))
                  .form()
                  .named("perDay")
                  .list(),
              DiagnosisReport::perDay)
          .and(
              "list",
              new Members<Listed>()
                  .and("start", TEXT, one -> one.report.clock(one.cycle(), one.cycle().start_s()))
                  .and("end", TEXT, one -> one.report.clock(one.cycle(), one.cycle().end_s()))
                  .and("energy_kWh", NUMBER, one -> to(3, one.cycle().energy_kWh()))
                  .and("power_kW", NUMBER, one -> to(3, one.cycle().power_kW()))
                  .and("confidence", NUMBER, one -> to(2, one.cycle().confidence()))
                  .and(
                      "trigger", TEXT, one -> one.report.diagnosis.triggers().get(one.index).word())
                  .and("ending", TEXT, one -> one.report.diagnosis.endings().get(one.index).word())
                  .form()
                  .named("cycle")
                  .list(),
              report ->
                  IntStream.range(0, report.diagnosis.cycles().count())
                      .mapToObj(index -> new Listed(report, index))
                      .toList())
          .form()
          .named("cycles");

  private static final JsonForm<Place> CAUSE =
      new Members<Place>()
          .and("rank", COUNT, place -> place.index + 1)
          .and("cause", TEXT, place -> place.ranked().word())
          .and("meaning", TEXT, place -> place.ranked().meaning())
          .and("differs", TEXT, place -> place.ranked().differs())
          .and("likelihood", NUMBER, place -> to(4, place.ranked().likelihood()))
          .and("explained", COUNT, place -> place.ranked().explained())
          .and("events", COUNT, place -> place.ranked().events())
          .and("predicted", SEEN, place -> place.report.predicted(place.ranked().predicted()))
          .and("observed", SEEN, place -> seen(place.report.diagnosis.observed()))
          .and("tellApart", TEXT, place -> place.ranked().tellApart())
          .and("evidence", TEXT, place -> place.ranked().evidence())
          .and(
              "findings",
              TEXT.list(),
              place ->
                  place.report.findings(place.ranked()).stream()
                      .map(finding -> finding.check().name())
                      .toList())
          .form()
          .named("cause");

  private static final JsonForm<Written> FORM =
      JsonReport.<Written>head(VERSION, Written::tool, written -> written.report.file)
          .and("reference", TEXT.orNull(), written -> written.report.reference)
          .and("log", LOG.orNull(), written -> written.report.diagnosis.log())
          .and("cycles", CYCLES, Written::report)
          .and(
              "causes",
              CAUSE.list(),
              written ->
                  IntStream.range(0, written.report.diagnosis.causes().size())
                      .mapToObj(index -> new Place(written.report, index))
                      .toList())
          .and("nothingFits", FLAG, written -> written.report.nothingFits())
          .and("healthy", FLAG.orNull(), written -> written.report.diagnosis.healthy())
          .and("cannotSee", TEXT.list(), written -> written.report.diagnosis.cannotSee())
          .and("notes", TEXT.list(), written -> written.report.notes())
          .form();

  private static double to(int decimals, double value) {
    double scale = Math.pow(10, decimals);
    return Math.rint(value * scale) / scale + 0.0;
  }

  private static List<Seen> seen(Observation observed) {
    List<Seen> all = new ArrayList<>();
    observed.features().forEach(f -> all.add(Seen.of(f, observed.get(f).orElse(0.0))));
    double starts = sum(observed.triggers());
    observed.triggers().forEach((trigger, count) -> all.add(Seen.of(trigger, count / starts)));
    double stops = sum(observed.endings());
    observed.endings().forEach((ending, count) -> all.add(Seen.of(ending, count / stops)));
    return all;
  }

  private static double sum(Map<?, Integer> counts) {
    return counts.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** What is predicted of all that can be observed in this log. */
  private List<Seen> predicted(Prediction predicted) {
    List<Seen> all = new ArrayList<>();
    predicted.features().forEach(f -> all.add(Seen.of(f, predicted.get(f).orElse(0.0))));
    return all;
  }

  private static String end(MeterLog log) {
    int last = log.rows() - 1;
    return log.clock(last, log.end_s(last)).toString();
  }

  private List<Cycles.PerDay> perDay() {
    return diagnosis.log().map(log -> diagnosis.cycles().perDay(log)).orElse(List.of());
  }

  private String clock(Cycle cycle, double instant_s) {
    return diagnosis
        .log()
        .map(log -> log.clock(cycle.first(), Math.round(instant_s)).toString())
        .orElse("");
  }

  private boolean nothingFits() {
    return !diagnosis.causes().isEmpty() && !diagnosis.fits();
  }

  /** One of each check: the first is the heaviest. */
  private List<Finding> findings(Ranked ranked) {
    Set<String> checks = new HashSet<>();
    return findings.stream()
        .filter(
            finding ->
                ranked.causes().stream()
                    .anyMatch(cause -> cause.checks().contains(finding.check().name())))
        .filter(finding -> checks.add(finding.check().name()))
        .toList();
  }

  List<String> notes() {
    List<String> notes = new ArrayList<>(skipped);
    notes.addAll(diagnosis.notes());
    diagnosis.words().notUnderstood().forEach(part -> notes.add("not understood: " + part));
    return notes;
  }

  /** The object, indented, without a line end. */
  public String json(String tool) {
    return FORM.written(new Written(this, tool), true);
  }

  /**
   * The page, ending in a line end.
   *
   * @param band_kW start and stop of the relay, where entered
   */
  public String html(String tool, List<Double> band_kW) {
    return DiagnosisPage.of(this, tool, band_kW);
  }

  /** The JSON Schema of these objects, indented, without a line end. */
  public static String schema() {
    return JsonForm.schema("diagnosis", VERSION, List.of(FORM));
  }

  /** The causes known, one a line. */
  public static String causes() {
    return java.util.Arrays.stream(Cause.values())
        .map(cause -> Layout.pad(cause.word(), 26) + cause.meaning() + "\n")
        .collect(Collectors.joining());
  }

  /** The note, ending in a line end. */
  public String text(Layout layout) {
    StringBuilder text = new StringBuilder();
    text.append(layout.spread(reference.orElse("(no reference)"), verdict()));
    text.append(layout.spread(file.isEmpty() ? "no setup file" : file, diagnosis.compared()));
    text.append('\n');
    diagnosis.log().ifPresent(log -> log(text, layout, log));
    entries(text, layout, "cannot be seen", diagnosis.cannotSee());
    runs(text, layout);
    text.append('\n');
    causes(text, layout);
    entries(text, layout, "note", notes());
    text.append(layout.entry("safety", CAUTION));
    return text.toString();
  }

  String verdict() {
    if (nothingFits()) {
      return "NO CAUSE FITS";
    }
    return diagnosis
        .healthy()
        .map(healthy -> healthy ? "NOTHING UNUSUAL" : "FAULT LIKELY")
        .orElse("NOT CLEAR");
  }

  private static void entries(
      StringBuilder text, Layout layout, String label, List<String> entries) {
    for (int index = 0; index < entries.size(); index++) {
      text.append(layout.entry(index == 0 ? label : "", entries.get(index)));
    }
  }

  private void log(StringBuilder text, Layout layout, MeterLog log) {
    text.append(layout.entry("log", understood(log)));
    for (Column column : log.columns()) {
      text.append(
          layout.entry(
              "",
              column.heading().name()
                  + ": "
                  + column.meaning().says()
                  + ", "
                  + column.form().says()
                  + ", "
                  + column.heading().unit().word()
                  + (column.heading().because().isEmpty() ? "" : ", " + column.heading().because())
                  + (column.remark().isEmpty() ? "" : "; " + column.remark())));
    }
  }

  /** What was understood of a log, in a line. */
  String understood(MeterLog log) {
    return log.name()
        + ": "
        + day(log.clock(0).toString())
        + " to "
        + day(end(log))
        + ", "
        + (log.regular() ? "readings every " : "readings as they change, usually every ")
        + interval(log.interval_s())
        + ", "
        + gaps(log)
        + order(log.order());
  }

  /** A cause with its probability. */
  String headline(int index) {
    Ranked ranked = diagnosis.causes().get(index);
    return ranked.meaning() + " (" + ranked.word() + ", " + percent(ranked.likelihood()) + ")";
  }

  /** What is predicted, what confirms it, and the findings, each with its label. */
  List<String> details(int index) {
    Ranked ranked = diagnosis.causes().get(index);
    List<String> details = new ArrayList<>();
    details.add("settings: " + (ranked.differs().isEmpty() ? "as entered" : ranked.differs()));
    if (ranked.events() > 0) {
      details.add("explains " + explains(ranked));
    }
    if (!ranked.evidence().isEmpty()) {
      details.add("best shown by " + ranked.evidence());
    }
    if (!ranked.telling().isEmpty()) {
      details.add("predicted: " + compared(ranked));
    }
    details.add("to confirm: " + ranked.tellApart());
    findings(ranked).forEach(finding -> details.add("finding: " + finding(finding)));
    return details;
  }

  private static String explains(Ranked ranked) {
    return ranked.explained() + " of " + ranked.events() + " starts and stops in the log";
  }

  private static String day(String time) {
    return time.replace('T', ' ');
  }

  private static String interval(int seconds) {
    return seconds % 60 == 0 ? seconds / 60 + " min" : seconds + " s";
  }

  private static String gaps(MeterLog log) {
    double hours = log.gaps().stream().mapToDouble(MeterLog.Gap::hours).sum();
    return log.gaps().isEmpty()
        ? "no gaps"
        : Words.count(log.gaps().size(), "gap")
            + ", together "
            + String.format(Locale.ROOT, "%.1f h", hours);
  }

  private static String order(MeterLog.Order order) {
    StringBuilder says = new StringBuilder();
    if (order.repeats() > 0) {
      says.append(", ").append(Words.count(order.repeats(), "repeat")).append(" left out");
    }
    if (order.moved() > 0) {
      says.append(", rows out of order sorted");
    }
    order.clockChanges().forEach(change -> says.append(", ").append(change));
    return says.toString();
  }

  private void runs(StringBuilder text, Layout layout) {
    Cycles cycles = diagnosis.cycles();
    if (diagnosis.log().isPresent()) {
      double days = Math.max(1, diagnosis.log().map(log -> log.covered_h() / 24).orElse(1.0));
      text.append(
          layout.entry(
              "runs",
              Words.count(cycles.count(), "run")
                  + " found from "
                  + cycles.how()
                  + String.format(Locale.ROOT, "; %.1f a day", cycles.count() / days)
                  + (cycles.count() == 0
                      ? ""
                      : ", at most "
                          + Words.count(cycles.startsInWorstHour(), "start")
                          + " in an hour")));
      counted("starts", text, layout, diagnosis.triggers(), Trigger::says);
      counted("stops", text, layout, diagnosis.endings(), Ending::says);
    }
    text.append(layout.entry("observed", observed()));
    if (!diagnosis.words().since().isEmpty()) {
      text.append(layout.entry("since", diagnosis.words().since()));
    }
  }

  /** How often each, the most frequent first. */
  private static <K extends Enum<K>> void counted(
      String label, StringBuilder text, Layout layout, List<K> all, Function<K, String> says) {
    Map<K, Long> counts =
        all.stream()
            .collect(Collectors.groupingBy(kind -> kind, TreeMap::new, Collectors.counting()));
    List<String> lines =
        counts.entrySet().stream()
            .sorted(Map.Entry.<K, Long>comparingByValue().reversed())
            .map(entry -> entry.getValue() + " " + says.apply(entry.getKey()))
            .toList();
    if (!lines.isEmpty()) {
      text.append(layout.entry(label, String.join("; ", lines)));
    }
  }

  String observed() {
    Observation observed = diagnosis.observed();
    return observed.features().isEmpty()
        ? "nothing that can be compared"
        : observed.features().stream()
            .filter(f -> !f.isShare() || observed.get(f).orElse(0.0) >= LEAST_SHARE)
            .map(f -> f.says() + " " + Values.says(f, observed.get(f).orElse(0.0)))
            .collect(Collectors.joining(", "));
  }

  private void causes(StringBuilder text, Layout layout) {
    if (diagnosis.causes().isEmpty()) {
      text.append(layout.entry("causes", notRanked()));
      text.append('\n');
      return;
    }
    if (nothingFits()) {
      text.append(
          layout.entry("causes", "none of the causes known explains this; the nearest are:"));
    }
    for (int index : shown()) {
      cause(text, layout, index + 1, diagnosis.causes().get(index));
    }
  }

  /** The first, and of the others those that are worth a look. */
  List<Integer> shown() {
    if (diagnosis.causes().isEmpty()) {
      return List.of();
    }
    List<Integer> shown = new ArrayList<>(List.of(0));
    int most = diagnosis.healthy().orElse(false) ? 1 : MOST_SHOWN;
    for (int index = 1; index < diagnosis.causes().size() && shown.size() < most; index++) {
      if (diagnosis.causes().get(index).likelihood() >= WORTH_SHOWING) {
        shown.add(index);
      }
    }
    return shown;
  }

  String notRanked() {
    if (diagnosis.observed().isEmpty() && diagnosis.log().isEmpty()) {
      return "nothing is observed: give --log or --observed";
    }
    return file.isEmpty()
        ? "to compare causes, give the setup file too"
        : "not ranked: what can be seen does not separate them; finer readings would";
  }

  private void cause(StringBuilder text, Layout layout, int rank, Ranked ranked) {
    text.append(
        layout.wrapped(
            Layout.pad(rank + "  " + percent(ranked.likelihood()), Layout.HEADLINE),
            ranked.meaning()));
    text.append(" ".repeat(Layout.HEADLINE)).append(ranked.word()).append('\n');
    text.append(
        layout.labelled("settings", ranked.differs().isEmpty() ? "as entered" : ranked.differs()));
    if (ranked.events() > 0) {
      text.append(layout.labelled("explains", explains(ranked)));
    }
    if (!ranked.evidence().isEmpty()) {
      text.append(layout.labelled("shown by", ranked.evidence()));
    }
    if (!ranked.telling().isEmpty()) {
      text.append(layout.labelled("predicted", compared(ranked)));
    }
    text.append(layout.labelled("to confirm", ranked.tellApart()));
    for (Finding finding : findings(ranked)) {
      text.append(layout.labelled("finding", finding(finding)));
    }
    text.append('\n');
  }

  private static String percent(double likelihood) {
    long percent = Math.round(100 * likelihood);
    return percent < 1 ? "<1 %" : Math.min(percent, 99) + " %";
  }

  /** What is predicted, beside what is observed: the most telling first. */
  private String compared(Ranked ranked) {
    Observation observed = diagnosis.observed();
    return ranked.telling().stream()
        .limit(MOST_COMPARED)
        .map(
            f ->
                f.says()
                    + " "
                    + Values.says(f, ranked.predicted().get(f).orElse(0.0))
                    + " (observed "
                    + Values.says(f, observed.get(f).orElse(0.0))
                    + ")")
        .collect(Collectors.joining(", "));
  }

  private static String finding(Finding finding) {
    String changes =
        finding.changes().stream().map(DiagnosisReport::change).collect(Collectors.joining(", "));
    return finding.check().name()
        + (changes.isEmpty() ? "" : ": " + changes)
        + (finding.proof() == null ? "" : ", tried");
  }

  private static String change(Change change) {
    return change.pointer().dotted() + " " + change.from() + " -> " + change.to();
  }
}
