package deadband.reading;

import deadband.document.Literal;
import deadband.document.NearestName;
import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.document.Span;
import deadband.paste.Written;
import deadband.setup.FieldKind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The corrections of a setup file that are beyond doubt, and the text with them in it. */
public final class Corrections {

  /** Numbers that are written otherwise than JSON has them. */
  private static final Set<Kind> NUMBERS =
      EnumSet.of(
          Kind.DECIMAL_COMMA,
          Kind.DIGITS_GROUPED,
          Kind.PLUS_SIGN,
          Kind.LONG_MINUS,
          Kind.LEADING_ZERO,
          Kind.POINT_WITHOUT_DIGIT,
          Kind.UNIT_WRITTEN);

  /** What is right there is a value of JSON, and stands for the whole of what is wrong. */
  private static final Set<Kind> WORDS =
      EnumSet.of(
          Kind.WORD_MISSPELT,
          Kind.OTHER_WORD,
          Kind.TEXT_NOT_QUOTED,
          Kind.SINGLE_QUOTES,
          Kind.CURLY_QUOTES,
          Kind.NAME_NOT_QUOTED);

  private static final int MOST_ROUNDS = 5;

  private Corrections() {}

  /** A correction that was made. */
  public record Made(Problem problem, String to) {}

  /**
   * A file with its corrections.
   *
   * @param left what is still wrong in it
   */
  public record Corrected(String text, List<Made> made, List<Problem> left) {}

  /** Adds what is to be written in place of what is wrong, where that is beyond doubt. */
  static Problem of(Problem problem) {
    Span span = problem.span();
    if (problem.correction() != null || span == null || problem.earlier() != null) {
      return problem;
    }
    if (NUMBERS.contains(problem.kind())) {
      return number(problem, span);
    }
    if (problem.kind() == Kind.UNKNOWN_NAME) {
      return name(problem);
    }
    return WORDS.contains(problem.kind()) && isValue(problem.right())
        ? problem.corrected(problem.right())
        : problem;
  }

  /** With its unit converted to that of the name. */
  private static Problem number(Problem problem, Span span) {
    Pointer pointer = problem.pointer();
    if (pointer == null
        || !(Written.kind(pointer).orElse(null) instanceof FieldKind.Num kind)
        || !(Written.number(problem.source().slice(span), kind.unit()).orElse(null)
            instanceof Written.Figure.One one)
        || !kind.admits(one.value())) {
      return problem;
    }
    String json = new BigDecimal(Literal.of(one.value()).json()).toPlainString();
    return problem.right(json).corrected(json);
  }

  /** A name that differs in capitals and marks alone. */
  private static Problem name(Problem problem) {
    String near = problem.nearest();
    if (near == null || !NearestName.isSame(problem.found().replace("\"", ""), near)) {
      return problem;
    }
    return problem.corrected(Literal.of(near).json());
  }

  private static boolean isValue(String right) {
    return right.matches("true|false|null|\"[^\"\\\\]*\"|-?\\d+(\\.\\d+)?");
  }

  /** The text after every correction that is beyond doubt; one after the other, each read again. */
  public static Corrected of(SetupReading.Unreadable reading) {
    Source source = reading.problems().get(0).source();
    if (!source.name().equals(reading.name())) {
      // an equipment file is the firm's, and stays as it is
      return new Corrected("", List.of(), reading.problems());
    }
    List<Made> made = new ArrayList<>();
    List<Problem> left = reading.problems();
    String text = source.text();
    for (int round = 0; round < MOST_ROUNDS; round++) {
      List<Problem> sure =
          left.stream()
              .filter(problem -> problem.correction() != null)
              .sorted(Problem.inOrder().reversed())
              .toList();
      if (sure.isEmpty()) {
        break;
      }
      text = made(text, sure, made);
      SetupReading again = SetupReading.ofText(source.name(), text);
      left = again instanceof SetupReading.Unreadable still ? still.problems() : List.of();
    }
    made.sort(Comparator.comparing(Made::problem, Problem.inOrder()));
    return new Corrected(text, List.copyOf(made), left);
  }

  /** Corrects from the end on, so that the places before it stay. */
  private static String made(String text, List<Problem> sure, List<Made> made) {
    StringBuilder out = new StringBuilder(text);
    int before = text.length() + 1;
    for (Problem problem : sure) {
      Span span = problem.span();
      String to = problem.correction();
      if (span != null && to != null && span.end() <= before) {
        out.replace(span.start(), span.end(), to);
        made.add(new Made(problem, to));
        before = span.start();
      }
    }
    return out.toString();
  }
}
