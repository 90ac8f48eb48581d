package deadband.report;

import static deadband.report.JsonText.list;
import static deadband.report.JsonText.number;
import static deadband.report.JsonText.string;
import static deadband.report.JsonText.texts;
import static deadband.report.JsonText.value;

import deadband.days.YearEffect;
import deadband.document.Node;
import deadband.document.Place;
import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.facts.Bound;
import deadband.facts.Measure;
import deadband.judging.Check;
import deadband.judging.Consequence;
import deadband.judging.Effect;
import deadband.judging.Finding;
import deadband.judging.Judgement;
import deadband.judging.Proof;
import deadband.judging.Remedy;
import deadband.judging.RulePage;
import deadband.limits.LimitOverride;
import deadband.provenance.Assumption;
import deadband.setup.Accepted;
import deadband.setup.Change;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;

/**
 * A judgement as JSON, format version 1: one object a file. Its schema is published beside that of
 * the setup file.
 */
public final class JsonReport {

  /** Version of this format. */
  public static final int VERSION = 1;

  private final JsonGenerator json;
  private final Report report;
  private final Judgement judgement;

  private JsonReport(JsonGenerator json, Report report) {
    this.json = json;
    this.report = report;
    this.judgement = report.judgement();
  }

  /**
   * The object of one judged file, without a line end.
   *
   * @param tool version of the tool
   * @param indented whether it is for people
   */
  public static String of(Report report, String tool, boolean indented) {
    return JsonText.of(indented, json -> new JsonReport(json, report).write(tool));
  }

  /** The object of a file that could not be read, without a line end. */
  public static String unreadable(
      String file, List<Problem> problems, String tool, boolean indented) {
    return JsonText.of(
        indented,
        json -> {
          json.writeStartObject();
          head(json, tool, file);
          list(json, "problems", problems, problem -> problem(json, problem));
          json.writeEndObject();
        });
  }

  private static void head(JsonGenerator json, String tool, String file) {
    json.writeNumberProperty("deadband", VERSION);
    string(json, "version", tool);
    string(json, "file", file);
  }

  private static void problem(JsonGenerator json, Problem problem) {
    json.writeStartObject();
    string(json, "problem", problem.kind().key());
    string(json, "says", problem.says());
    Pointer pointer = problem.pointer();
    string(json, "pointer", pointer == null ? null : pointer.toString());
    Optional<Place> place = problem.place();
    value(json, "line", place.map(at -> (double) at.line()).orElse(null));
    value(json, "column", place.map(at -> (double) at.column()).orElse(null));
    string(json, "found", problem.found());
    string(json, "right", problem.right());
    string(json, "nearest", problem.nearest());
    json.writeEndObject();
  }

  private void write(String tool) {
    json.writeStartObject();
    head(json, tool, report.file());
    string(json, "reference", report.reference().orElse(null));
    string(json, "verdict", judgement.verdict().word());
    list(json, "findings", judgement.findings(), this::finding);
    list(
        json,
        "notJudged",
        judgement.notJudged(),
        open -> {
          json.writeStartObject();
          string(json, "check", open.check().name());
          texts(json, "missing", open.missing());
          accepted(open.accepted());
          json.writeEndObject();
        });
    texts(json, "notFitted", names(judgement.notFitted()));
    texts(json, "clear", names(judgement.clear()));
    list(
        json,
        "clearOnAssumption",
        judgement.clearOnAssumption(),
        clear -> {
          json.writeStartObject();
          string(json, "check", clear.check().name());
          texts(json, "assumed", clear.assumed());
          json.writeEndObject();
        });
    list(json, "assumptions", judgement.assumptions(), this::assumption);
    list(json, "overrides", judgement.overrides(), this::override);
    texts(json, "notes", Notes.of(report));
    texts(json, "cautions", Cautions.of(report));
    new DayJson(json).days(judgement.days());
    counts();
    string(json, "edition", judgement.edition());
    string(json, "asOf", judgement.asOf().toString());
    json.writeEndObject();
  }

  private static List<String> names(List<Check> checks) {
    return checks.stream().map(Check::name).toList();
  }

  private void assumption(Assumption assumption) {
    json.writeStartObject();
    string(json, "pointer", assumption.pointer().toString());
    value(json, "value", assumption.value());
    string(json, "basis", assumption.basis());
    json.writeEndObject();
  }

  private void override(LimitOverride override) {
    json.writeStartObject();
    string(json, "limit", override.limit().entry().name());
    number(json, "from", override.limit().entry().value());
    number(json, "to", override.value());
    string(json, "unit", override.limit().entry().unit().printed());
    json.writeBooleanProperty("looser", override.isWeaker());
    string(json, "file", override.file());
    string(json, "source", override.source().orElse(null));
    string(json, "reason", override.reason().orElse(null));
    string(json, "by", override.by().orElse(null));
    json.writeEndObject();
  }

  private void counts() {
    json.writeName("counts");
    json.writeStartObject();
    json.writeNumberProperty("checks", judgement.checks().size());
    json.writeNumberProperty("findings", judgement.findings().size());
    json.writeNumberProperty("notJudged", judgement.notJudged().size());
    json.writeNumberProperty("notFitted", judgement.notFitted().size());
    json.writeNumberProperty("clear", judgement.clear().size());
    json.writeNumberProperty("clearOnAssumption", judgement.clearOnAssumption().size());
    for (Consequence consequence : Consequence.values()) {
      json.writeNumberProperty(consequence.word(), judgement.count(consequence));
    }
    json.writeEndObject();
  }

  private void finding(Finding finding) {
    json.writeStartObject();
    json.writeNumberProperty("rank", judgement.rank(finding.key()));
    string(json, "check", finding.check().name());
    if (finding.check().isHouse()) {
      json.writeBooleanProperty("houseRule", true);
    }
    string(json, "class", finding.consequence().word());
    string(json, "says", RulePage.of(finding.check()).says());
    list(json, "at", finding.detail().at(), this::at);
    observed(finding.detail().observed());
    limit(finding.detail().limit());
    list(
        json,
        "evidence",
        finding.detail().evidence(),
        measure -> {
          json.writeStartObject();
          measure(measure);
          json.writeEndObject();
        });
    list(json, "changes", finding.changes(), this::change);
    string(json, "trust", finding.trust().words());
    texts(
        json, "work", finding.remedies().isEmpty() ? List.of() : finding.remedies().get(0).work());
    proof(finding.proof());
    list(json, "alternatives", finding.remedies().stream().skip(1).toList(), this::remedy);
    cause(finding.causedBy());
    accepted(finding.accepted());
    basis(finding);
    json.writeEndObject();
  }

  private void at(Pointer pointer) {
    Optional<Place> place = report.place(pointer);
    json.writeStartObject();
    string(json, "pointer", pointer.toString());
    value(json, "line", place.map(where -> (double) where.line()).orElse(null));
    value(json, "column", place.map(where -> (double) where.column()).orElse(null));
    value(json, "value", report.document().find(pointer).map(JsonReport::plain).orElse(null));
    json.writeEndObject();
  }

  /** A value as told: a section is named by its place, not repeated. */
  private static @Nullable Object plain(Node node) {
    if (node instanceof Node.Numeral number) {
      return number.value();
    }
    if (node instanceof Node.Text text) {
      return text.value();
    }
    if (node instanceof Node.Truth truth) {
      return truth.value();
    }
    return node instanceof Node.Sequence list
        ? list.items().stream().map(JsonReport::plain).filter(item -> item != null).toList()
        : null;
  }

  private void observed(@Nullable Measure measure) {
    json.writeName("observed");
    if (measure == null) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    measure(measure);
    json.writeEndObject();
  }

  private void limit(@Nullable Bound bound) {
    json.writeName("limit");
    if (bound == null) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    measure(bound.measure());
    string(json, "name", bound.name());
    string(json, "source", bound.source());
    string(json, "known", bound.known());
    json.writeEndObject();
  }

  private void measure(Measure measure) {
    string(json, "quantity", measure.quantity());
    number(json, "value", measure.value());
    string(json, "unit", measure.unit());
  }

  private void change(Change change) {
    json.writeStartObject();
    string(json, "pointer", change.pointer().toString());
    value(json, "from", change.from());
    value(json, "to", change.to());
    json.writeEndObject();
  }

  private void remedy(Remedy remedy) {
    json.writeStartObject();
    list(json, "changes", remedy.changes(), this::change);
    string(json, "trust", remedy.trust().words());
    texts(json, "work", remedy.work());
    proof(remedy.proof());
    json.writeEndObject();
  }

  private void proof(@Nullable Proof proof) {
    json.writeName("proof");
    if (proof == null) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    texts(json, "clears", proof.clears());
    texts(json, "raises", proof.raises());
    texts(json, "enlarges", proof.enlarges());
    texts(json, "opens", proof.opens());
    list(json, "givesUp", proof.effect().losses(), this::loss);
    json.writeBooleanProperty("effectKnown", proof.effect().known());
    new DayJson(json).days(proof.effect().daysAfter());
    years(proof.effect());
    json.writeEndObject();
  }

  private void loss(Effect.Loss loss) {
    json.writeStartObject();
    string(json, "quantity", loss.quantity());
    number(json, "before", loss.before());
    number(json, "after", loss.after());
    string(json, "unit", loss.unit());
    json.writeEndObject();
  }

  private void years(Effect effect) {
    json.writeName("year");
    if (effect.yearBefore().isEmpty() || effect.yearAfter().isEmpty()) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    year("before", effect.yearBefore().get());
    year("after", effect.yearAfter().get());
    json.writeEndObject();
  }

  private void year(String name, YearEffect year) {
    json.writeName(name);
    json.writeStartObject();
    number(json, "heatFromPV_kWh", Math.rint(year.solarHeat_kWh()));
    number(json, "heatFromPVByHeatPump_kWh", Math.rint(year.solarHeatByHeatPump_kWh()));
    number(json, "import_kWh", Math.rint(year.import_kWh()));
    number(json, "export_kWh", Math.rint(year.export_kWh()));
    json.writeNumberProperty("relayClosures", year.relayClosings());
    json.writeNumberProperty("starts", year.heatPumpStarts());
    json.writeEndObject();
  }

  private void cause(Finding.@Nullable Key cause) {
    value(json, "causedBy", cause == null ? null : (double) judgement.rank(cause));
  }

  private void accepted(@Nullable Accepted entry) {
    json.writeName("accepted");
    if (entry == null) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    string(json, "reason", entry.reason().value());
    string(json, "by", entry.by().value());
    string(json, "on", entry.on().optional().map(LocalDate::toString).orElse(null));
    string(json, "until", entry.until().optional().map(LocalDate::toString).orElse(null));
    json.writeEndObject();
  }

  private void basis(Finding finding) {
    json.writeName("basis");
    json.writeStartObject();
    string(json, "how", finding.detail().basis());
    texts(json, "told", finding.provenance().told());
    texts(json, "assumed", finding.provenance().assumedPointers());
    json.writeEndObject();
  }
}
