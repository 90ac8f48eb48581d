package deadband.report;

import deadband.document.Pointer;
import deadband.judging.Check;
import deadband.judging.Consequence;
import deadband.judging.Judgement;
import deadband.judging.NotJudged;
import deadband.judging.OpenQuestion;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** What was not judged, as questions to be answered, the most urgent first. */
final class QuestionText {

  /** Lines that a report gives to what was not judged, the heading among them. */
  private static final int MOST_LINES = 10;

  /** Questions that a report asks where not all were wanted. */
  private static final int MOST = 5;

  private static final List<String> NUMBERS = List.of("one", "two", "three", "four", "five");
  private static final int INDENT = 4;

  /** Checks that a row of the record names; of more it says how many. */
  private static final int MOST_NAMED = 3;

  private static final String SKIPPED = "example days skipped";

  private final Judgement judgement;
  private final Layout layout;
  private final List<OpenQuestion> questions;

  private QuestionText(Judgement judgement, Layout layout) {
    this.judgement = judgement;
    this.layout = layout;
    this.questions = judgement.questions();
  }

  /** A few lines with the first questions; empty where everything was judged. */
  static String first(Judgement judgement, Layout layout) {
    QuestionText text = new QuestionText(judgement, layout);
    return text.questions.isEmpty() ? text.others() : text.few() + text.others();
  }

  /** Every question with the checks that wait for it. */
  static String all(Judgement judgement, Layout layout) {
    QuestionText text = new QuestionText(judgement, layout);
    return text.questions.isEmpty() ? text.others() : text.every() + text.others();
  }

  /** How many questions are open, on a line; empty where there is none. */
  static String counted(Judgement judgement, Layout layout) {
    QuestionText text = new QuestionText(judgement, layout);
    return text.questions.isEmpty() ? "" : layout.wrapped("", text.counted());
  }

  /** Each question with the checks that wait for it, then what no answer would open. */
  static List<RecordModel.Question> rows(Judgement judgement) {
    List<RecordModel.Question> rows = new ArrayList<>();
    for (OpenQuestion open : judgement.questions()) {
      rows.add(
          new RecordModel.Question(
              open.question().asks(),
              open.question().where().words(),
              open.question().pointer().dotted(),
              names(open.opens()),
              open.opens().size() > MOST_NAMED ? opened(open) : names(open.opens())));
    }
    List<Check> skipped = skipped(judgement);
    if (!skipped.isEmpty()) {
      rows.add(RecordModel.Question.none(SKIPPED, names(skipped)));
    }
    judgement.notJudged().stream()
        .filter(open -> open.accepted() != null)
        .forEach(open -> rows.add(RecordModel.Question.none(accepted(open), open.check().name())));
    return rows;
  }

  private String few() {
    StringBuilder items = new StringBuilder();
    int shown = 0;
    for (OpenQuestion question : questions.subList(0, Math.min(MOST, questions.size()))) {
      String item = item(question, shown + 1, opened(question));
      if (1 + lines(items.toString() + item) > MOST_LINES) {
        break;
      }
      items.append(item);
      shown++;
    }
    String more =
        shown == questions.size()
            ? ":"
            : ". The " + NUMBERS.get(shown - 1) + " to answer first, --all for the rest:";
    return layout.wrapped("", counted() + more) + items;
  }

  private static long lines(String text) {
    return text.lines().count();
  }

  private String every() {
    StringBuilder items = new StringBuilder(layout.wrapped("", counted() + ":"));
    for (int i = 0; i < questions.size(); i++) {
      OpenQuestion question = questions.get(i);
      items.append(item(question, i + 1, opened(question) + ": " + names(question.opens())));
    }
    return items.toString();
  }

  private String counted() {
    long waiting =
        judgement.notJudged().stream()
            .filter(open -> open.accepted() == null && !open.missing().isEmpty())
            .count();
    return Words.count((int) waiting, "check")
        + (waiting == 1 ? " needs " : " need ")
        + Words.count(questions.size(), "answer");
  }

  private String item(OpenQuestion open, int number, String opens) {
    return layout.wrapped(Layout.pad(" " + number, INDENT), asked(open) + ", " + opens);
  }

  private static String asked(OpenQuestion open) {
    return open.question().asks()
        + " ("
        + open.question().where().words()
        + ") "
        + open.question().pointer().dotted();
  }

  /** How many checks wait for the answer, and how many of them are of the gravest class. */
  private static String opened(OpenQuestion open) {
    Consequence gravest =
        open.opens().stream().map(Check::consequence).min(Comparator.naturalOrder()).orElseThrow();
    int of = (int) open.opens().stream().filter(c -> c.consequence() == gravest).count();
    String checks = Words.count(open.opens().size(), "check");
    return of == open.opens().size()
        ? checks + " (" + gravest.word() + ")"
        : checks + " (" + Words.count(of, gravest) + ")";
  }

  private static String names(List<Check> checks) {
    return checks.stream().map(Check::name).collect(Collectors.joining(", "));
  }

  /** What no answer would open: example days that were skipped, and what was accepted open. */
  private String others() {
    StringBuilder lines = new StringBuilder();
    List<Check> skipped = skipped(judgement);
    if (!skipped.isEmpty()) {
      lines.append(layout.entry("not judged", SKIPPED + ": " + names(skipped)));
    }
    judgement.notJudged().stream()
        .filter(open -> open.accepted() != null)
        .forEach(
            open ->
                lines.append(
                    layout.entry("not judged", accepted(open) + ": " + open.check().name())));
    return lines.toString();
  }

  private static List<Check> skipped(Judgement judgement) {
    return judgement.notJudged().stream()
        .filter(open -> open.missing().isEmpty())
        .map(NotJudged::check)
        .toList();
  }

  private static String accepted(NotJudged open) {
    return "no "
        + OpenQuestion.outermost(open.missing()).stream()
            .map(Pointer::dotted)
            .collect(Collectors.joining(", "))
        + " (accepted)";
  }
}
