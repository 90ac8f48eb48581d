package deadband.report;

import static deadband.report.JsonForm.COUNT;
import static deadband.report.JsonForm.FLAG;
import static deadband.report.JsonForm.NUMBER;
import static deadband.report.JsonForm.TEXT;
import static deadband.report.JsonForm.VALUE;

import deadband.days.YearEffect;
import deadband.document.Node;
import deadband.document.Place;
import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.facts.Bound;
import deadband.facts.Measure;
import deadband.judging.Check;
import deadband.judging.ClearOnAssumption;
import deadband.judging.Consequence;
import deadband.judging.Effect;
import deadband.judging.Finding;
import deadband.judging.Judgement;
import deadband.judging.NotJudged;
import deadband.judging.OpenQuestion;
import deadband.judging.Proof;
import deadband.judging.Remedy;
import deadband.judging.RulePage;
import deadband.judging.Trust;
import deadband.judging.Verdict;
import deadband.limits.LimitOverride;
import deadband.paste.Pasted;
import deadband.paste.Pasted.Ambiguous;
import deadband.paste.Pasted.NotUnderstood;
import deadband.paste.Pasted.Understood;
import deadband.provenance.Assumption;
import deadband.report.JsonForm.Members;
import deadband.setup.Accepted;
import deadband.setup.Asked;
import deadband.setup.Change;
import deadband.setup.DataSheet;
import deadband.setup.Entered;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A judgement as JSON, format version 2: one object a file. Its schema is made of the same forms.
 */
public final class JsonReport {

  /** Version of this format. */
  public static final int VERSION = 2;

  /** A file that was judged, and the version of the tool. */
  private record Judged(Report report, String tool) {
    Judgement judgement() {
      return report.judgement();
    }

    List<Ranked> findings() {
      return judgement().findings().stream().map(each -> new Ranked(report, each)).toList();
    }
  }

  /** A file that could not be read. */
  private record Unreadable(String file, List<Problem> problems, String tool) {}

  /** A finding among the others. */
  private record Ranked(Report report, Finding finding) {
    int rankOf(Finding.Key key) {
      return report.judgement().rank(key);
    }

    List<Located> at() {
      return finding.detail().at().stream().map(place -> new Located(report, place)).toList();
    }
  }

  /** A place in the file. */
  private record Located(Report report, Pointer pointer) {
    Optional<Place> place() {
      return report.place(pointer);
    }
  }

  private static final JsonForm<Pointer> POINTER =
      TEXT.with("pattern", "^(/.*)?$").named("pointer").of(Pointer::toString);

  private static final JsonForm<String> CHECK = TEXT.with("pattern", "^[a-z0-9-]+$").named("check");

  private static final JsonForm<List<String>> CHECKS =
      CHECK.list().with("uniqueItems", true).named("checks");

  private static final JsonForm<Integer> PLACE = COUNT.with("minimum", 1);

  private static final Members<Measure> MEASURE =
      new Members<Measure>()
          .and("quantity", TEXT, Measure::quantity)
          .and("value", NUMBER, Measure::value)
          .and("unit", TEXT, Measure::unit);

  private static final JsonForm<Measure> MEASURED = MEASURE.form().named("measure");

  private static final JsonForm<Bound> LIMIT =
      new Members<Bound>()
          .and(MEASURE, Bound::measure)
          .and("name", TEXT, Bound::name)
          .and("source", TEXT, Bound::source)
          .and("known", TEXT.described("how the value is known"), Bound::known)
          .form();

  private static final JsonForm<Optional<String>> FROM = TEXT.orNull();

  private static final JsonForm<Located> AT =
      new Members<Located>()
          .and("pointer", POINTER, Located::pointer)
          .and("line", PLACE.orNull(), at -> at.place().map(Place::line))
          .and("column", PLACE.orNull(), at -> at.place().map(Place::column))
          .and("value", VALUE, at -> at.report().node(at.pointer()).flatMap(JsonReport::plain))
          .and(
              "from",
              FROM.described("equipment file of the value, to which line and column then refer"),
              at -> at.report().sheet(at.pointer()).map(DataSheet::file))
          .form();

  private static final JsonForm<Optional<Accepted>> ACCEPTED =
      new Members<Accepted>()
          .and("reason", TEXT.orNull(), entry -> entry.reason().optional())
          .and("by", TEXT.orNull(), entry -> entry.by().optional())
          .and("on", TEXT.orNull(), entry -> date(entry.on()))
          .and("until", TEXT.orNull(), entry -> date(entry.until()))
          .form()
          .named("accepted")
          .orNull();

  private static final JsonForm<List<Change>> CHANGES =
      new Members<Change>()
          .and("pointer", POINTER, Change::pointer)
          .and("from", VALUE, change -> Optional.ofNullable(change.from()))
          .and("to", VALUE, change -> Optional.of(change.to()))
          .form()
          .named("change")
          .list();

  private static final JsonForm<Effect.Loss> LOSS =
      new Members<Effect.Loss>()
          .and("quantity", TEXT, Effect.Loss::quantity)
          .and("before", NUMBER, Effect.Loss::before)
          .and("after", NUMBER, Effect.Loss::after)
          .and("unit", TEXT, Effect.Loss::unit)
          .form();

  private static final JsonForm<YearEffect> YEAR =
      new Members<YearEffect>()
          .and("heatFromPV_kWh", NUMBER, year -> Math.rint(year.solarHeat_kWh()))
          .and(
              "heatFromPVByHeatPump_kWh", NUMBER, year -> Math.rint(year.solarHeatByHeatPump_kWh()))
          .and("import_kWh", NUMBER, year -> Math.rint(year.import_kWh()))
          .and("export_kWh", NUMBER, year -> Math.rint(year.export_kWh()))
          .and("relayClosures", COUNT, YearEffect::relayClosings)
          .and("heatPumpStarts", COUNT, YearEffect::heatPumpStarts)
          .form()
          .named("year");

  private static final JsonForm<Effect> YEARS =
      new Members<Effect>()
          .and("before", YEAR, effect -> effect.yearBefore().orElseThrow())
          .and("after", YEAR, effect -> effect.yearAfter().orElseThrow())
          .form();

  private static final JsonForm<Optional<Proof>> PROOF =
      new Members<Proof>()
          .and("clears", CHECKS, Proof::clears)
          .and("raises", CHECKS, Proof::raises)
          .and("enlarges", CHECKS, Proof::enlarges)
          .and(
              "opens",
              CHECKS.described("checks that could be judged before and no longer can"),
              Proof::opens)
          .and("givesUp", LOSS.list(), proof -> proof.effect().losses())
          .and("effectKnown", FLAG, proof -> proof.effect().known())
          .and("exampleDays", DayForms.DAYS, proof -> proof.effect().daysAfter())
          .and(
              "year",
              YEARS.described("a year of built-in days").orNull(),
              proof -> Optional.of(proof.effect()).filter(Effect::isOfYear))
          .form()
          .described("what came of trying the changes; null where there are none")
          .named("proof")
          .orNull();

  private static final JsonForm<Trust> TRUST =
      JsonForm.oneOf(Arrays.stream(Trust.values()).map(Trust::words).toList())
          .described("work on site: something has to be fitted, replaced or moved")
          .named("trust")
          .of(Trust::words);

  private static final JsonForm<List<String>> WORK =
      TEXT.list().described("what has to be done on site before the changes hold");

  private static final JsonForm<Remedy> REMEDY =
      new Members<Remedy>()
          .and("changes", CHANGES, Remedy::changes)
          .and("trust", TRUST, Remedy::trust)
          .and("work", WORK, Remedy::work)
          .and("proof", PROOF, remedy -> Optional.of(remedy.proof()))
          .form();

  /** The values taken from one equipment file. */
  private record Taken(String file, List<Pointer> values) {
    static List<Taken> of(Report report) {
      return report.sheets().stream()
          .map(sheet -> new Taken(sheet.file(), report.takenFrom(sheet)))
          .toList();
    }

    /** Those that a finding rests on. */
    static List<Taken> of(Ranked ranked) {
      List<Pointer> grounds = ranked.finding().provenance().entered();
      return of(ranked.report()).stream()
          .map(all -> new Taken(all.file, all.values.stream().filter(grounds::contains).toList()))
          .filter(taken -> !taken.values.isEmpty())
          .toList();
    }
  }

  private static final JsonForm<List<Taken>> TAKEN =
      new Members<Taken>()
          .and("file", TEXT, Taken::file)
          .and("values", POINTER.list(), Taken::values)
          .form()
          .named("equipment")
          .list();

  private static final JsonForm<Ranked> METHOD =
      new Members<Ranked>()
          .and("how", TEXT, ranked -> ranked.finding().detail().basis())
          .and("entered", POINTER.list(), ranked -> ranked.finding().provenance().entered())
          .and(
              "fromEquipment",
              TAKEN.described("those of the values entered that an equipment file gives"),
              Taken::of)
          .and("assumed", POINTER.list(), ranked -> ranked.finding().provenance().assumedPointers())
          .form();

  private static final Members<Finding> IDENTITY =
      new Members<Finding>()
          .and("check", CHECK, finding -> finding.check().name())
          .and("houseRule", FLAG, finding -> finding.check().isHouse())
          .and("class", JsonForm.oneOf(classes()), finding -> finding.consequence().word())
          .and("headline", TEXT, finding -> RulePage.of(finding.check()).says());

  private static final Members<Finding> ACCOUNT =
      new Members<Finding>()
          .orNull("observed", MEASURED, finding -> finding.detail().observed())
          .orNull("limit", LIMIT, finding -> finding.detail().limit())
          .and("evidence", MEASURED.list(), finding -> finding.detail().evidence())
          .and("changes", CHANGES, Finding::changes)
          .and("trust", TRUST, Finding::trust)
          .and("work", WORK, JsonReport::work)
          .and("proof", PROOF, finding -> Optional.ofNullable(finding.proof()))
          .and(
              "alternatives",
              REMEDY.list().described("other remedies that were tried and hold"),
              finding -> finding.remedies().stream().skip(1).toList())
          .and("accepted", ACCEPTED, finding -> Optional.ofNullable(finding.accepted()));

  private static final JsonForm<Ranked> FINDING =
      new Members<Ranked>()
          .and("rank", PLACE, ranked -> ranked.rankOf(ranked.finding().key()))
          .and(IDENTITY, Ranked::finding)
          .and("at", AT.list(), Ranked::at)
          .and(ACCOUNT, Ranked::finding)
          .and("method", METHOD, ranked -> ranked)
          .and(
              "causedBy",
              PLACE.described("rank of the finding whose cure clears this one too").orNull(),
              ranked -> Optional.ofNullable(ranked.finding().causedBy()).map(ranked::rankOf))
          .form()
          .named("finding");

  private static final JsonForm<NotJudged> NOT_JUDGED =
      new Members<NotJudged>()
          .and("check", CHECK, open -> open.check().name())
          .and("missing", POINTER.list(), NotJudged::missing)
          .and("accepted", ACCEPTED, open -> Optional.ofNullable(open.accepted()))
          .form();

  private static final JsonForm<OpenQuestion> QUESTION =
      new Members<OpenQuestion>()
          .and("pointer", POINTER, open -> open.question().pointer())
          .and("question", TEXT, open -> open.question().asks())
          .and("where", JsonForm.oneOf(places()), open -> open.question().where().words())
          .and(
              "opens",
              CHECKS.described("the checks that wait for the answer"),
              open -> names(open.opens()))
          .form();

  private static final JsonForm<ClearOnAssumption> CLEAR_ON_ASSUMPTION =
      new Members<ClearOnAssumption>()
          .and("check", CHECK, clear -> clear.check().name())
          .and("assumed", POINTER.list(), ClearOnAssumption::assumed)
          .form();

  static final JsonForm<List<Assumption>> ASSUMPTIONS =
      new Members<Assumption>()
          .and("pointer", POINTER, Assumption::pointer)
          .and("value", VALUE, assumed -> Optional.of(assumed.value()))
          .and("reason", TEXT, Assumption::basis)
          .form()
          .named("assumption")
          .list();

  private static final JsonForm<LimitOverride> OVERRIDE =
      new Members<LimitOverride>()
          .and("limit", TEXT, override -> override.limit().entry().name())
          .and(
              "from",
              NUMBER.described("the rule book's value"),
              override -> override.limit().entry().value())
          .and("to", NUMBER.described("the value in force"), LimitOverride::value)
          .and("unit", TEXT, override -> override.limit().entry().unit().printed())
          .and(
              "looser",
              FLAG.described("whether it lets more of a hazard pass"),
              LimitOverride::isWeaker)
          .and("file", TEXT, LimitOverride::file)
          .and("source", TEXT.orNull(), LimitOverride::source)
          .and("reason", TEXT.orNull(), LimitOverride::reason)
          .and("by", TEXT.orNull(), LimitOverride::by)
          .form();

  private static final JsonForm<Problem> PROBLEM =
      new Members<Problem>()
          .and("problem", TEXT.with("pattern", "^[a-z-]+$"), problem -> problem.kind().key())
          .and("says", TEXT, Problem::says)
          .and(
              "file",
              TEXT.described("the setup file, or an equipment file that it names"),
              problem -> problem.source().name())
          .and("pointer", POINTER.orNull(), problem -> Optional.ofNullable(problem.pointer()))
          .and("line", PLACE.orNull(), problem -> problem.place().map(Place::line))
          .and("column", PLACE.orNull(), problem -> problem.place().map(Place::column))
          .and("found", TEXT, Problem::found)
          .and("right", TEXT, Problem::right)
          .orNull("nearest", TEXT, Problem::nearest)
          .orNull(
              "correction",
              TEXT.described("JSON to write in place of what was found, where it is beyond doubt"),
              Problem::correction)
          .form();

  private static final JsonForm<Understood> UNDERSTOOD =
      new Members<Understood>()
          .and("line", PLACE, Understood::line)
          .and("text", TEXT, Understood::text)
          .and("pointer", POINTER, Understood::pointer)
          .and("value", VALUE, Understood::value)
          .and("unit", TEXT.described("of the value as converted"), Understood::unit)
          .form();

  private static final JsonForm<NotUnderstood> NOT_UNDERSTOOD =
      new Members<NotUnderstood>()
          .and("line", PLACE, NotUnderstood::line)
          .and("text", TEXT, NotUnderstood::text)
          .form();

  private static final JsonForm<Ambiguous> AMBIGUOUS =
      new Members<Ambiguous>()
          .and("line", PLACE, Ambiguous::line)
          .and("text", TEXT, Ambiguous::text)
          .and("choices", TEXT.list().with("minItems", 1), Ambiguous::choices)
          .form();

  /** How a pasted text was understood; three empty lists for a setup file. */
  private static final Members<Optional<Pasted>> PASTED =
      new Members<Optional<Pasted>>()
          .and(
              "understood",
              UNDERSTOOD.list().described("values read from a text that is no setup file"),
              pasted -> pasted.map(Pasted::understood).orElse(List.of()))
          .and(
              "notUnderstood",
              NOT_UNDERSTOOD.list(),
              pasted -> pasted.map(Pasted::notUnderstood).orElse(List.of()))
          .and(
              "ambiguous",
              AMBIGUOUS.list(),
              pasted -> pasted.map(Pasted::ambiguous).orElse(List.of()));

  private static final JsonForm<Judgement> COUNTS = counts();

  private static final Members<Judgement> OUTCOMES =
      new Members<Judgement>()
          .and("notJudged", NOT_JUDGED.list(), Judgement::notJudged)
          .and(
              "questions",
              QUESTION.list().described("what is to be answered, by urgency"),
              Judgement::questions)
          .and("notFitted", CHECKS, judgement -> names(judgement.notFitted()))
          .and("clear", CHECKS, judgement -> names(judgement.clear()))
          .and("clearOnAssumption", CLEAR_ON_ASSUMPTION.list(), Judgement::clearOnAssumption)
          .and("assumptions", ASSUMPTIONS, Judgement::assumptions)
          .and(
              "overrides",
              OVERRIDE.list().described("limits set in place of the rule book's"),
              Judgement::overrides);

  private static final Members<Judgement> TAIL =
      new Members<Judgement>()
          .and("exampleDays", DayForms.DAYS, Judgement::days)
          .and("counts", COUNTS, judgement -> judgement)
          .and("edition", TEXT.described("of the rule book"), Judgement::edition)
          .and("asOf", TEXT, judgement -> judgement.asOf().toString());

  private static final JsonForm<Judged> JUDGED =
      JsonReport.<Judged>head(VERSION, Judged::tool, judged -> judged.report().file())
          .and(
              "reference",
              TEXT.orNull().described("name of the job"),
              judged -> judged.report().reference())
          .and(
              "equipment",
              TAKEN.described("equipment files, and the values taken from each"),
              judged -> Taken.of(judged.report()))
          .and(PASTED, judged -> Optional.ofNullable(judged.report().pasted()))
          .and("verdict", JsonForm.oneOf(verdicts()), judged -> judged.judgement().verdict().word())
          .and("findings", FINDING.list().described("ranked, worst first"), Judged::findings)
          .and(OUTCOMES, Judged::judgement)
          .and(
              "notes",
              TEXT.list().described("what is no finding and still worth saying"),
              judged -> Notes.of(judged.report()))
          .and("cautions", TEXT.list(), judged -> Cautions.of(judged.report()))
          .and(TAIL, Judged::judgement)
          .form()
          .named("judged");

  private static final JsonForm<Unreadable> UNREADABLE =
      JsonReport.<Unreadable>head(VERSION, Unreadable::tool, Unreadable::file)
          .and("problems", PROBLEM.list().with("minItems", 1), Unreadable::problems)
          .form()
          .named("unreadable");

  private JsonReport() {}

  /**
   * The object of one judged file, without a line end.
   *
   * @param tool version of the tool
   * @param indented whether it is for people
   */
  public static String of(Report report, String tool, boolean indented) {
    return JUDGED.written(new Judged(report, tool), indented);
  }

  /** The object of a file that could not be read, without a line end. */
  public static String unreadable(
      String file, List<Problem> problems, String tool, boolean indented) {
    return UNREADABLE.written(new Unreadable(file, problems, tool), indented);
  }

  /** The JSON Schema of these objects, indented, without a line end. */
  public static String schema() {
    return JsonForm.schema("report", VERSION, List.of(JUDGED, UNREADABLE));
  }

  /** What every object begins with: the format, the tool and the file. */
  static <T> Members<T> head(int format, Function<T, String> tool, Function<T, String> file) {
    return new Members<T>()
        .and(
            "deadband",
            JsonForm.constant(format).described("version of this format"),
            each -> format)
        .and("version", TEXT.described("version of the tool"), tool)
        .and("file", TEXT, file);
  }

  private static JsonForm<Judgement> counts() {
    Members<Judgement> counts =
        new Members<Judgement>()
            .and("checks", COUNT, judgement -> judgement.checks().size())
            .and("findings", COUNT, judgement -> judgement.findings().size())
            .and("notJudged", COUNT, judgement -> judgement.notJudged().size())
            .and("notFitted", COUNT, judgement -> judgement.notFitted().size())
            .and("clear", COUNT, judgement -> judgement.clear().size())
            .and("clearOnAssumption", COUNT, judgement -> judgement.clearOnAssumption().size());
    for (Consequence consequence : Consequence.values()) {
      counts.and(consequence.word(), COUNT, judgement -> judgement.count(consequence));
    }
    return counts.form();
  }

  private static List<String> classes() {
    return Arrays.stream(Consequence.values()).map(Consequence::word).toList();
  }

  private static List<String> places() {
    return Arrays.stream(Asked.Where.values()).map(Asked.Where::words).toList();
  }

  private static List<String> verdicts() {
    return Arrays.stream(Verdict.values()).map(Verdict::word).toList();
  }

  private static List<String> names(List<Check> checks) {
    return checks.stream().map(Check::name).toList();
  }

  private static List<String> work(Finding finding) {
    return finding.remedies().isEmpty() ? List.of() : finding.remedies().get(0).work();
  }

  private static Optional<String> date(Entered<LocalDate> day) {
    return day.optional().map(LocalDate::toString);
  }

  /** A value as entered: a section is named by its place, not repeated. */
  private static Optional<Object> plain(Node node) {
    if (node instanceof Node.Numeral number) {
      return Optional.of(number.value());
    }
    if (node instanceof Node.Text text) {
      return Optional.of(text.value());
    }
    if (node instanceof Node.Truth truth) {
      return Optional.of(truth.value());
    }
    return node instanceof Node.Sequence list
        ? Optional.of(list.items().stream().flatMap(item -> plain(item).stream()).toList())
        : Optional.empty();
  }
}
