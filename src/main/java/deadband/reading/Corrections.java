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
import deadband.setup.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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

  private static final Pattern VALUE =
      Pattern.compile("\\s*:\\s*(-?\\d+(?:\\.\\d+)?)(?![\\w.]|,\\d)");

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
      return name(problem, span);
    }
    if (problem.kind() == Kind.NOT_A_CHOICE || problem.kind() == Kind.WRONG_KIND) {
      return word(problem);
    }
    if (problem.kind() == Kind.COMMA_MISSING || problem.kind() == Kind.SEMICOLON) {
      return problem.corrected(",");
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

  /** A name that differs in capitals and marks alone, or that has another unit. */
  private static Problem name(Problem problem, Span span) {
    String near = problem.nearest();
    if (near == null) {
      return problem;
    }
    String found = problem.found().replace("\"", "");
    if (NearestName.isSame(found, near)) {
      String json = Literal.of(near).json();
      return problem.right(json).near((String) null).corrected(json);
    }
    return otherUnit(problem, span, found, near);
  }

  /** "startDelay_s": 300 is "startDelay_min": 5. */
  private static Problem otherUnit(Problem problem, Span span, String found, String near) {
    Unit unit = Unit.of(near);
    int mark = found.lastIndexOf('_');
    Matcher value =
        VALUE.matcher(problem.source().text()).region(span.end(), problem.source().text().length());
    Pointer pointer = problem.pointer();
    if (unit == Unit.NONE
        || mark < 0
        || pointer == null
        || !near.equals(found.substring(0, mark) + "_" + unit.suffix())
        || !value.lookingAt()
        || !(Written.number(value.group(1) + " " + found.substring(mark + 1), unit).orElse(null)
            instanceof Written.Figure.One one)
        || !(Written.kind(pointer.parent().orElseThrow().child(near)).orElse(null)
            instanceof FieldKind.Num kind)
        || !kind.admits(one.value())) {
      return problem;
    }
    String number = new BigDecimal(Literal.of(one.value()).json()).toPlainString();
    String json = Literal.of(near).json() + ": " + number;
    return problem
        .at(new Span(span.start(), value.end()))
        .right(json)
        .near((String) null)
        .corrected(json);
  }

  /** A word of the trade for one of the words to choose from, or for a number: weekly. */
  private static Problem word(Problem problem) {
    Pointer pointer = problem.pointer();
    String found = problem.found();
    if (pointer == null || !found.matches("\"[^\"\\\\]+\"")) {
      return problem;
    }
    String text = found.substring(1, found.length() - 1);
    String near = problem.nearest();
    Optional<String> meant =
        near != null && NearestName.isSame(text, near)
            ? Optional.of(Literal.of(near).json())
            : Written.word(pointer, text);
    return meant
        .map(json -> problem.right(json).near((String) null).corrected(json))
        .orElse(problem);
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
