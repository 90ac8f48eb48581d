package deadband.report;

import deadband.document.Place;
import deadband.document.Pointer;
import deadband.facts.Bound;
import deadband.facts.Detail;
import deadband.facts.Measure;
import deadband.judging.Check;
import deadband.judging.Finding;
import deadband.judging.Judgement;
import deadband.judging.Remedy;
import deadband.judging.RulePage;
import deadband.limits.LimitOverride;
import deadband.provenance.Assumption;
import deadband.setup.Accepted;
import deadband.setup.Change;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A judgement as a note to read: verdict, findings with the worst first, what could not be judged,
 * what was assumed, and the cautions that go with a hazard.
 */
public final class TextReport {

  /** Other remedies shown beside the first. */
  private static final int MOST_OTHERS = 2;

  /** Lines of a small screen. */
  private static final int SCREEN = 24;

  private final Report report;
  private final Judgement judgement;
  private final Layout layout;
  private final StringBuilder text = new StringBuilder();

  private TextReport(Report report, Layout layout) {
    this.report = report;
    this.judgement = report.judgement();
    this.layout = layout;
  }

  /** The report, ending in a line end. */
  public static String of(Report report, Layout layout) {
    return of(report, layout, false);
  }

  /**
   * The report, ending in a line end.
   *
   * @param all whether every open question is asked, not only the first
   */
  public static String of(Report report, Layout layout, boolean all) {
    TextReport writer = new TextReport(report, layout);
    writer.heading();
    writer.findings();
    writer.questions(all);
    writer.tail();
    writer.verdictAgain();
    return writer.text.toString();
  }

  /** Verdict, counts and headlines, a line each. */
  public static String brief(Report report, Layout layout) {
    TextReport writer = new TextReport(report, layout);
    writer.heading();
    writer.judgement.findings().forEach(writer::headline);
    return writer.text.append(QuestionText.counted(writer.judgement, layout)).toString();
  }

  private void headline(Finding finding) {
    RulePage page = RulePage.of(finding.check());
    text.append(says(finding, finding.isOpen() ? page.says() : page.says() + " (accepted)"));
  }

  private void heading() {
    text.append(verdictBeside(report.reference().orElse("(no reference)")));
    text.append(layout.spread(report.file(), counts()));
  }

  private String verdictBeside(String left) {
    String verdict = judgement.verdict().words().toUpperCase(Locale.ROOT);
    return layout.spread(left, verdict).replace(verdict, Emphasis.of(verdict, layout.coloured()));
  }

  private void questions(boolean all) {
    String questions =
        all ? QuestionText.all(judgement, layout) : QuestionText.first(judgement, layout);
    text.append(questions.isEmpty() ? "" : "\n").append(questions);
  }

  /** The verdict once more, where its first place has left the screen. */
  private void verdictAgain() {
    if (text.chars().filter(c -> c == '\n').count() >= SCREEN) {
      text.append(verdictBeside("verdict"));
    }
  }

  private String counts() {
    int clear = judgement.clear().size() + judgement.clearOnAssumption().size();
    return String.format(
        Locale.ROOT,
        "%s: %d found, %d clear, %d not judged, %d not fitted",
        Words.count(judgement.checks().size(), "check"),
        judgement.findings().stream().map(Finding::check).distinct().count(),
        clear,
        judgement.notJudged().size(),
        judgement.notFitted().size());
  }

  private void findings() {
    for (Finding finding : judgement.findings()) {
      text.append('\n');
      Finding.Key cause = finding.causedBy();
      if (cause == null) {
        finding(finding);
      } else {
        folded(finding, cause);
      }
    }
  }

  /** What is cleared with another finding keeps its rank, and points there. */
  private void folded(Finding finding, Finding.Key cause) {
    headline(finding, RulePage.of(finding.check()));
    line("settings", places(finding.detail().at()));
    line("see", judgement.rank(cause) + " " + cause.check() + ": its change clears this too");
  }

  private void finding(Finding finding) {
    RulePage page = RulePage.of(finding.check());
    Detail detail = finding.detail();
    headline(finding, page);
    line("settings", places(detail.at()));
    line("found", observed(detail.observed()));
    line("limit", limit(detail.limit()));
    line("effect", NumberSentence.of(page.inNumbers(), measures(detail)));
    line("example days", NumberSentence.of(page.aDay(), measures(detail)));
    line("why", page.why());
    remedies(finding);
    line("method", method(finding));
    line("accepted", accepted(finding.accepted()));
    line("also cleared", consequences(finding));
  }

  /** The remedy to take, then others that were tried and hold too. */
  private void remedies(Finding finding) {
    List<Remedy> remedies = finding.remedies();
    if (remedies.isEmpty()) {
      return;
    }
    Remedy first = remedies.get(0);
    String label = first.isSetting() ? "change" : "work";
    first.changes().forEach(change -> line(label, change(change)));
    line("tried", ProofWords.of(finding, first));
    remedies.stream()
        .skip(1)
        .limit(MOST_OTHERS)
        .forEach(other -> line("or", ProofWords.shortly(other)));
  }

  private void headline(Finding finding, RulePage page) {
    text.append(says(finding, page.says()));
    text.append(layout.wrapped(" ".repeat(Layout.HEADLINE), name(finding.check())));
  }

  private String says(Finding finding, String headline) {
    String word = finding.consequence().word().toUpperCase(Locale.ROOT);
    String beginning =
        Layout.pad(Layout.pad("" + judgement.rank(finding.key()), 3) + word, Layout.HEADLINE);
    return layout
        .wrapped(beginning, headline)
        .replaceFirst(word, Emphasis.of(word, layout.coloured()));
  }

  private static String name(Check check) {
    return check.name() + (check.isHouse() ? " (house rule)" : "");
  }

  private void line(String label, String content) {
    if (!content.isEmpty()) {
      text.append(layout.labelled(label, content));
    }
  }

  private String places(List<Pointer> pointers) {
    return pointers.stream()
        .map(this::place)
        .flatMap(Optional::stream)
        .collect(Collectors.joining(", "));
  }

  private Optional<String> place(Pointer pointer) {
    return report.written(pointer).map(value -> pointer.dotted() + " " + value + line(pointer));
  }

  private String line(Pointer pointer) {
    return report.place(pointer).map(Place::line).map(line -> " (line " + line + ")").orElse("");
  }

  private static String observed(@Nullable Measure measure) {
    return measure == null ? "" : Words.withUnit(measure) + ", " + measure.quantity();
  }

  private static String limit(@Nullable Bound bound) {
    if (bound == null) {
      return "";
    }
    boolean sourced = !bound.source().equals("none") && !bound.source().equals(Bound.THIS_SETUP);
    boolean assumed = bound.known().equals(Bound.ASSUMED);
    int remark = bound.known().indexOf("; ");
    return Words.withUnit(bound.measure())
        + ", "
        + bound.measure().quantity()
        + " ("
        + bound.name()
        + (sourced ? ": " + bound.source() : "")
        + (assumed ? ", assumed" : "")
        + (remark < 0 ? "" : bound.known().substring(remark))
        + ")";
  }

  private static List<Measure> measures(Detail detail) {
    List<Measure> measures = new ArrayList<>(detail.evidence());
    if (detail.observed() != null) {
      measures.add(detail.observed());
    }
    if (detail.limit() != null) {
      measures.add(detail.limit().measure());
    }
    return measures;
  }

  /** A change on one line with others. */
  static String inline(Change change) {
    return change(change).replace("   ", " ");
  }

  static String change(Change change) {
    String from = change.from() == null ? "missing" : Words.value(change.from());
    return change.pointer().dotted() + "   " + from + " -> " + Words.value(change.to());
  }

  private static String method(Finding finding) {
    List<Assumption> assumed = finding.provenance().assumed();
    return assumed.isEmpty()
        ? finding.detail().basis()
        : finding.detail().basis() + "; assumed " + assumptions(assumed);
  }

  private static String assumptions(List<Assumption> assumptions) {
    return assumptions.stream()
        .map(assumed -> assumed.pointer().dotted() + " " + Words.value(assumed.value()))
        .collect(Collectors.joining(", "));
  }

  private static String accepted(@Nullable Accepted entry) {
    if (entry == null) {
      return "";
    }
    return entry.reason().optional().orElse("")
        + entry.by().optional().map(by -> ", by " + by).orElse("")
        + entry.on().optional().map(on -> ", on " + on).orElse("")
        + entry.until().optional().map(until -> ", until " + until).orElse("");
  }

  /** The findings that are cleared with this one. */
  private String consequences(Finding cause) {
    return judgement.findings().stream()
        .filter(finding -> cause.key().equals(finding.causedBy()))
        .map(
            finding ->
                judgement.rank(finding.key())
                    + " "
                    + finding.consequence().word()
                    + " "
                    + finding.check().name())
        .collect(Collectors.joining(", "));
  }

  private void tail() {
    StringBuilder tail = new StringBuilder();
    days().forEach(day -> tail.append(entry("example days", tail, day)));
    text.append(tail.isEmpty() ? "" : "\n").append(tail);
    tail.setLength(0);
    if (!judgement.assumptions().isEmpty()) {
      tail.append(layout.entry("assumed", assumptions(judgement.assumptions())));
    }
    judgement
        .overrides()
        .forEach(override -> tail.append(layout.entry("limit", override(override))));
    Notes.of(report).forEach(note -> tail.append(layout.entry("note", note)));
    List<String> cautions = Cautions.of(report);
    if (!cautions.isEmpty()) {
      tail.append(layout.entry("safety", String.join(" ", cautions)));
    }
    tail.append(
        layout.entry("as of", judgement.asOf() + ", rule book edition " + judgement.edition()));
    text.append('\n').append(tail);
  }

  static String override(LimitOverride override) {
    return override.words() + (override.isWeaker() ? " (looser than the rule book)" : "");
  }

  private List<String> days() {
    List<String> lines = new ArrayList<>();
    judgement
        .days()
        .ifPresent(
            days -> {
              lines.add(DayWords.of("clear", days.clear()));
              lines.add(DayWords.of("cloud", days.cloud()));
              days.cycle().ifPresent(cycle -> lines.add(DayWords.of(cycle)));
            });
    return lines;
  }

  private String entry(String label, StringBuilder before, String content) {
    return layout.entry(before.isEmpty() ? label : "", content);
  }
}
