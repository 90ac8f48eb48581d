package deadband.document;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Why a file, or one value in it, cannot be taken as it is. Data only: {@link ProblemText} makes a
 * text of it.
 *
 * <pre>{@code
 * Problem.of(source, Problem.Kind.OUT_OF_RANGE, "1500", "0 to 1440 min")
 *     .at(pointer, node.span());
 * }</pre>
 *
 * @param source the file, or its name alone where it could not be read
 * @param pointer which value it is about, null where that is not known
 * @param span where it stands, null where the file as a whole is meant
 * @param found what stands there, as it is written
 * @param right what would be right
 * @param nearest the known name that was most likely meant, null where none is near
 * @param earlier the place this one follows from, such as the bracket that is not closed; null
 *     where there is none
 */
public record Problem(
    Source source,
    Kind kind,
    @Nullable Pointer pointer,
    @Nullable Span span,
    String found,
    String right,
    @Nullable String nearest,
    @Nullable Span earlier) {

  /** A problem of the whole file. */
  public static Problem of(Source source, Kind kind, String found, String right) {
    return new Problem(source, kind, null, null, found, right, null, null);
  }

  public Problem at(Pointer where, Span there) {
    return new Problem(source, kind, where, there, found, right, nearest, earlier);
  }

  public Problem at(Span there) {
    return new Problem(source, kind, pointer, there, found, right, nearest, earlier);
  }

  public Problem near(@Nullable String known) {
    return new Problem(source, kind, pointer, span, found, right, known, earlier);
  }

  public Problem near(Optional<String> known) {
    return near(known.orElse(null));
  }

  public Problem earlier(Span before) {
    return new Problem(source, kind, pointer, span, found, right, nearest, before);
  }

  /** Line and column where it stands; empty for a problem of the whole file. */
  public Optional<Place> place() {
    return Optional.ofNullable(span).map(there -> source.place(there.start()));
  }

  /** Line and column of the earlier place. */
  public Optional<Place> earlierPlace() {
    return Optional.ofNullable(earlier).map(there -> source.place(there.start()));
  }

  /** What is wrong, in one sentence. */
  public String says() {
    return kind.says();
  }

  /** By place, the whole file first; then kind, pointer and what was found. */
  public static Comparator<Problem> inOrder() {
    return Comparator.<Problem>comparingInt(problem -> start(problem.span))
        .thenComparing(Problem::kind)
        .thenComparing(Problem::pointer, Comparator.nullsFirst(Comparator.naturalOrder()))
        .thenComparing(Problem::found);
  }

  private static int start(@Nullable Span span) {
    return span == null ? -1 : span.start();
  }

  /** What can be wrong, in our own words. */
  public enum Kind {
    // the file
    NO_SUCH_FILE("There is no such file"),
    A_FOLDER("This is a folder, not a file"),
    NOT_A_FILE("This is a device or a pipe, not a file"),
    NO_PERMISSION("This file may not be read"),
    NOT_READABLE("This file could not be read"),
    TOO_LARGE("This file is too large"),
    EMPTY("There is nothing in this file"),
    OTHER_ENCODING("This file is not written in UTF-8"),
    NOT_UTF8("This byte is not UTF-8"),

    // what keeps the text from being JSON
    NOT_JSON("This is not JSON"),
    NOT_A_SECTION("The file does not hold one section in { }"),
    TOO_DEEP("Brackets stand inside each other too deep"),
    COMMA_MISSING("A comma is missing"),
    COMMA_TOO_MANY("There is a comma too many"),
    SEMICOLON("A semicolon stands where a comma belongs"),
    COLON_MISSING("The colon after the name is missing"),
    EQUALS_SIGN("An equals sign stands where a colon belongs"),
    VALUE_MISSING("The value is missing"),
    NAME_MISSING("The name is missing"),
    NAME_NOT_QUOTED("A name stands without quotes"),
    TEXT_NOT_QUOTED("A text stands without quotes"),
    WORD_MISSPELT("true, false and null are written in small letters"),
    OTHER_WORD("This word is not JSON's own"),
    QUOTE_INSIDE("A double quote stands inside a text"),
    QUOTE_NOT_CLOSED("A quote is opened and not closed on its line"),
    SINGLE_QUOTES("Single quotes stand where double quotes belong"),
    CURLY_QUOTES("Curly quotes stand where straight ones belong"),
    CONTROL_CHARACTER("A control character stands inside a text"),
    ESCAPE_UNKNOWN("A backslash begins something that JSON does not know"),
    NUMBER_MALFORMED("This is not a number as JSON writes it"),
    DECIMAL_COMMA("A decimal comma stands where a point belongs"),
    DIGITS_GROUPED("The digits of a number are grouped"),
    PLUS_SIGN("A number begins with a plus sign"),
    LONG_MINUS("A dash stands where a minus sign belongs"),
    LEADING_ZERO("A number begins with a zero too many"),
    POINT_WITHOUT_DIGIT("A decimal point lacks a digit beside it"),
    UNIT_WRITTEN("A unit is written after a number"),
    BRACKET_NOT_CLOSED("A bracket is not closed"),
    BRACKET_MISMATCHED("A bracket is closed by one of the other kind"),
    BRACKET_TOO_MANY("A bracket is closed that was not opened"),
    COMMENT_NOT_CLOSED("A comment is opened and not closed"),
    COMMENT_BY_HASH("A comment begins with a hash"),
    STRANGE_BLANK("A blank that JSON does not know"),
    TEXT_AFTER_END("Something follows the end"),

    // what reading can go on after
    NAME_TWICE("The same name stands twice"),
    NOT_FINITE("This number is not finite"),
    TOO_SMALL_A_NUMBER("This number is too small to be told from zero"),
    NUMBER_TOO_LONG("This number has too many digits"),
    HALF_CHARACTER("An escape stands for half a character"),
    TOO_MANY("There are too many problems to go on"),

    // what a described shape does not allow
    OTHER_VERSION("This is another version of the format"),
    UNKNOWN_NAME("This name is not known here"),
    WRONG_KIND("This is a value of the wrong kind"),
    NOT_A_CHOICE("This is not one of the words to choose from"),
    OUT_OF_RANGE("This cannot physically be"),
    UNIT_DOUBTED("Is this number meant in another unit?"),
    NOT_A_DATE("This is not a date"),
    NOT_A_TIME("This is not a time of day"),
    TIME_TWICE("The same time stands twice"),
    TIME_BACKWARDS("Time goes backwards"),
    TIME_GAP("Times are missing"),
    STEP_IRREGULAR("This time is off the step of the others"),
    STEP_UNFIT("The step of the times cannot be used"),
    NOT_FITTING("This does not go with the rest"),
    LIMIT_LOOSENED("A hazard limit is loosened without reason and name"),
    NOT_A_RULE("The rule compiler does not take this"),
    RULE_UNFIT("This house rule cannot be used as it stands"),
    RULES_TOO_SLOW("The rule compiler did not come to an end"),
    MISSING("Something that is needed is missing"),

    // what is no fault of the file
    FAULT("The program failed on this file");

    private final String says;

    Kind(String says) {
      this.says = says;
    }

    /** Its name in output that programs read: {@code decimal-comma}. */
    public String key() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The sentence that heads a problem of this kind. */
    public String says() {
      return says;
    }
  }
}
