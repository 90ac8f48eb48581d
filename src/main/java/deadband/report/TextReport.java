package deadband.report;

import deadband.judging.Finding;
import deadband.judging.Judgement;
import deadband.judging.RulePage;
import deadband.limits.LimitOverride;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A judgement as a note to read: verdict, findings with the worst first, what could not be judged,
 * what was assumed, and the cautions that go with a hazard.
 */
public final class TextReport {

  /** Lines of a small screen. */
  private static final int SCREEN = 24;

  private final Report report;
  private final Judgement judgement;
  private final FindingLines lines;
  private final Layout layout;
  private final StringBuilder text = new StringBuilder();

  private TextReport(Report report, Layout layout) {
    this.report = report;
    this.judgement = report.judgement();
    this.lines = FindingLines.of(report);
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
    text.append(layout.spread(report.file(), counts(judgement)));
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

  static String counts(Judgement judgement) {
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
      finding(finding);
    }
  }

  private void finding(Finding finding) {
    headline(finding, RulePage.of(finding.check()));
    lines.of(finding).forEach(line -> text.append(layout.labelled(line.label(), line.content())));
  }

  private void headline(Finding finding, RulePage page) {
    text.append(says(finding, page.says()));
    text.append(layout.wrapped(" ".repeat(Layout.HEADLINE), FindingLines.name(finding.check())));
  }

  private String says(Finding finding, String headline) {
    String word = finding.consequence().word().toUpperCase(Locale.ROOT);
    String beginning =
        Layout.pad(Layout.pad("" + judgement.rank(finding.key()), 3) + word, Layout.HEADLINE);
    return layout
        .wrapped(beginning, headline)
        .replaceFirst(word, Emphasis.of(word, layout.coloured()));
  }

  private void tail() {
    StringBuilder tail = new StringBuilder();
    days(judgement).forEach(day -> tail.append(entry("example days", tail, day)));
    text.append(tail.isEmpty() ? "" : "\n").append(tail);
    tail.setLength(0);
    if (!judgement.assumptions().isEmpty()) {
      tail.append(layout.entry("assumed", FindingLines.assumptions(judgement.assumptions())));
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

  static List<String> days(Judgement judgement) {
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
