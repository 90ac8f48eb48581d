package deadband.report;

import static deadband.report.JsonForm.FLAG;
import static deadband.report.JsonForm.NUMBER;
import static deadband.report.JsonForm.TEXT;

import deadband.days.YearEffect;
import deadband.document.Pointer;
import deadband.judging.Check;
import deadband.judging.Consequence;
import deadband.judging.Finding;
import deadband.judging.Judgement;
import deadband.judging.NotJudged;
import deadband.judging.RulePage;
import deadband.judging.Verdict;
import deadband.report.JsonForm.Members;
import deadband.setup.Setup;
import deadband.setup.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Two setups of one home side by side: values changed, what that does to the findings, and what a
 * clear day, a cloudy one and a year differ in.
 *
 * @param yearBefore empty where no year can be run
 * @param tool version of this program
 */
public record Comparison(
    Report before,
    Report after,
    Optional<YearEffect> yearBefore,
    Optional<YearEffect> yearAfter,
    String tool) {

  /** Version of the JSON format. */
  public static final int VERSION = 1;

  /** Sizes that differ by less are the same, rounded otherwise. */
  private static final double SAME_SIZE = 1e-6;

  private static final String FOUND = "/asFound/settings";

  /** A value that differs; empty where it is not entered. */
  record Difference(Pointer pointer, Optional<Object> from, Optional<Object> to) {

    String words() {
      return from.map(Words::value).orElse("missing")
          + " -> "
          + to.map(Words::value).orElse("missing");
    }
  }

  /** The same finding before and after. */
  private record Pair(Finding before, Finding after) {

    int growth() {
      int byClass = before.consequence().compareTo(after.consequence());
      double bySize = after.size().severity() - before.size().severity();
      return byClass != 0 ? byClass : Math.abs(bySize) < SAME_SIZE ? 0 : (int) Math.signum(bySize);
    }
  }

  /** The values in which two setups differ, what was found and what was accepted left out. */
  static List<Difference> settings(Setup before, Setup after) {
    Map<Pointer, Object> from = Shape.enteredBeside(before, after);
    Map<Pointer, Object> to = Shape.enteredBeside(after, before);
    Set<Pointer> changed = new TreeSet<>();
    from.forEach((at, value) -> addIf(!value.equals(to.get(at)), at, changed));
    to.forEach((at, value) -> addIf(!from.containsKey(at), at, changed));
    return changed.stream()
        .filter(at -> !Set.of("asFound", "accepted").contains(at.tokens().get(0)))
        .map(
            at ->
                new Difference(
                    at, Optional.ofNullable(from.get(at)), Optional.ofNullable(to.get(at))))
        .toList();
  }

  private static void addIf(boolean differs, Pointer at, Set<Pointer> to) {
    if (differs) {
      to.add(at);
    }
  }

  private List<Difference> settings() {
    return settings(before.setup(), after.setup());
  }

  private static Map<String, Finding> byName(Report report) {
    Map<String, Finding> all = new TreeMap<>();
    report.judgement().findings().forEach(finding -> all.put(name(finding), finding));
    return all;
  }

  /** A value found stands in a place of its own, and is the same value. */
  private static String name(Finding finding) {
    String at = finding.subject().toString();
    return finding.check().name()
        + " "
        + (at.startsWith(FOUND) ? at.substring(FOUND.length()) : at);
  }

  private static List<Finding> without(Report of, Report other) {
    Set<String> known = byName(other).keySet();
    return of.judgement().findings().stream()
        .filter(finding -> !known.contains(name(finding)))
        .toList();
  }

  private List<Finding> cleared() {
    return without(before, after);
  }

  private List<Finding> raised() {
    return without(after, before);
  }

  /** Findings on both sides, by whether they grew, shrank or stayed. */
  private List<Finding> kept(int growth) {
    Map<String, Finding> then = byName(before);
    return after.judgement().findings().stream()
        .filter(finding -> then.containsKey(name(finding)))
        .filter(
            finding ->
                new Pair(Objects.requireNonNull(then.get(name(finding))), finding).growth()
                    == growth)
        .toList();
  }

  private static List<Check> open(Report of, Report other) {
    Set<String> known =
        other.judgement().notJudged().stream()
            .map(open -> open.check().name())
            .collect(Collectors.toSet());
    return of.judgement().notJudged().stream()
        .map(NotJudged::check)
        .filter(check -> !known.contains(check.name()))
        .toList();
  }

  /** What could be judged before and no longer can. */
  private List<Check> noLongerJudged() {
    return open(after, before);
  }

  /**
   * Whether the second is worse: its verdict, or a hazard, damage or waste that is new, larger or
   * no longer judged.
   */
  public boolean isWorse() {
    return verdict(after).compareTo(verdict(before)) > 0
        || Stream.concat(raised().stream(), kept(1).stream())
            .anyMatch(finding -> finding.consequence().blocksSignOff())
        || noLongerJudged().stream().anyMatch(check -> check.consequence().blocksSignOff());
  }

  private static Verdict verdict(Report report) {
    return report.judgement().verdict();
  }

  private List<Quantity> quantities() {
    List<Quantity> all = new ArrayList<>();
    Judgement then = before.judgement();
    Judgement now = after.judgement();
    if (then.days().isPresent() && now.days().isPresent()) {
      all.addAll(Quantity.days(then.days().get(), now.days().get()));
    }
    if (yearBefore.isPresent() && yearAfter.isPresent()) {
      all.addAll(Quantity.year(yearBefore.get(), yearAfter.get()));
    }
    return all;
  }

  private Note note() {
    boolean worse = isWorse();
    return new Note(
        after.reference().orElse(after.file()),
        "Comparison of two setups",
        worse ? "worse" : "not worse",
        worse ? "not-ready" : "ready",
        List.of(
            new Note.Fact("before", before.file() + ": " + verdict(before).words()),
            new Note.Fact("after", after.file() + ": " + verdict(after).words()),
            new Note.Fact(
                "as of",
                after.judgement().asOf() + ", rule book edition " + after.judgement().edition())),
        sections().filter(section -> !section.isEmpty()).toList());
  }

  private Stream<Note.Section> sections() {
    List<Note.Row> changed =
        settings().stream()
            .map(
                each ->
                    Note.Row.change(
                        Words.named(each.pointer()),
                        shown(each, each.from()),
                        shown(each, each.to())))
            .toList();
    List<Note.Row> differ =
        quantities().stream()
            .map(each -> Note.Row.change(each.label(), each.before(), each.after()))
            .toList();
    return Stream.of(
        Note.Section.of(
            "Values changed",
            changed.isEmpty() ? "None." : "",
            List.of("Value", "Before", "After"),
            changed),
        findings("Findings raised", raised()),
        findings("Findings larger", kept(1)),
        findings("Findings smaller", kept(-1)),
        findings("Findings left", kept(0)),
        findings("Findings cleared", cleared()),
        checks("No longer judged", noLongerJudged()),
        checks("Judged now", open(before, after)),
        Note.Section.of(
                "Example days and year",
                quantities().isEmpty() ? "No difference, or not simulated." : "",
                List.of("Quantity", "Before", "After"),
                differ)
            .with(DayPictures.overlays(before, after)));
  }

  private static String shown(Difference difference, Optional<Object> value) {
    return value.map(each -> Words.shown(difference.pointer(), each)).orElse("missing");
  }

  private static Note.Section findings(String heading, List<Finding> findings) {
    return Note.Section.of(
        heading,
        "",
        List.of("Class and check", "Finding"),
        findings.stream()
            .map(
                each ->
                    Note.Row.of(
                        each.consequence().word() + " " + each.check().name(),
                        RulePage.of(each.check()).says()))
            .toList());
  }

  private static Note.Section checks(String heading, List<Check> checks) {
    return Note.Section.of(
        heading,
        "",
        List.of("Class and check", "What it looks for"),
        checks.stream()
            .map(
                each ->
                    Note.Row.of(
                        each.consequence().word() + " " + each.name(), RulePage.of(each).says()))
            .toList());
  }

  /** The comparison as a note, ending in a line end. */
  public String text(Layout layout) {
    return note().text(layout);
  }

  public String markdown() {
    return note().markdown();
  }

  public String html() {
    return note().html();
  }

  /** How it is written as JSON; a check, which names what changed, needs none of it. */
  private static final class Json {
    static final JsonForm<Report> SIDE =
        new Members<Report>()
            .and("file", TEXT, Report::file)
            .and("verdict", TEXT, report -> verdict(report).word())
            .form()
            .named("side");

    static final JsonForm<List<Difference>> SETTINGS =
        new Members<Difference>()
            .and("pointer", TEXT, each -> each.pointer().toString())
            .and("from", JsonForm.VALUE, Difference::from)
            .and("to", JsonForm.VALUE, Difference::to)
            .form()
            .list();

    static final JsonForm<List<Finding>> FINDINGS =
        new Members<Finding>()
            .and("check", TEXT, each -> each.check().name())
            .and(
                "class",
                JsonForm.oneOf(Stream.of(Consequence.values()).map(Consequence::word).toList()),
                each -> each.consequence().word())
            .and("subject", TEXT, each -> each.subject().toString())
            .form()
            .named("finding")
            .list();

    static final JsonForm<List<Check>> CHECKS = TEXT.<Check>of(Check::name).named("check").list();

    static final JsonForm<List<Quantity>> QUANTITIES =
        new Members<Quantity>()
            .and("of", TEXT, Quantity::of)
            .and("quantity", TEXT, Quantity::name)
            .and("before", NUMBER, Quantity::from)
            .and("after", NUMBER, Quantity::to)
            .and("unit", TEXT, Quantity::unit)
            .form()
            .list();

    static final JsonForm<Comparison> FORM =
        new Members<Comparison>()
            .and("deadband", JsonForm.constant(VERSION), each -> VERSION)
            .and("version", TEXT.described("version of the tool"), Comparison::tool)
            .and("before", SIDE, Comparison::before)
            .and("after", SIDE, Comparison::after)
            .and("worse", FLAG, Comparison::isWorse)
            .and("values", SETTINGS, Comparison::settings)
            .and("raised", FINDINGS, Comparison::raised)
            .and("larger", FINDINGS, each -> each.kept(1))
            .and("smaller", FINDINGS, each -> each.kept(-1))
            .and("left", FINDINGS, each -> each.kept(0))
            .and("cleared", FINDINGS, Comparison::cleared)
            .and("noLongerJudged", CHECKS, Comparison::noLongerJudged)
            .and("judgedNow", CHECKS, each -> open(each.before, each.after))
            .and("differences", QUANTITIES, Comparison::quantities)
            .form();
  }

  /** The object, indented, without a line end. */
  public String json() {
    return Json.FORM.written(this, true);
  }

  /** The JSON Schema of these objects, indented, without a line end. */
  public static String schema() {
    return JsonForm.schema("comparison", VERSION, List.of(Json.FORM));
  }
}
