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
 * @param correction what to write in place of what stands there, where that is beyond doubt; null
 *     where it is not
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
    @Nullable String correction,
    @Nullable Span earlier) {

  /** A problem of the whole file. */
  public static Problem of(Source source, Kind kind, String found, String right) {
    return new Problem(source, kind, null, null, found, right, null, null, null);
  }

  public Problem at(Pointer where, Span there) {
    return new Problem(source, kind, where, there, found, right, nearest, correction, earlier);
  }

  public Problem at(Span there) {
    return new Problem(source, kind, pointer, there, found, right, nearest, correction, earlier);
  }

  public Problem near(@Nullable String known) {
    return new Problem(source, kind, pointer, span, found, right, known, correction, earlier);
  }

  public Problem near(Optional<String> known) {
    return near(known.orElse(null));
  }

  public Problem earlier(Span before) {
    return new Problem(source, kind, pointer, span, found, right, nearest, correction, before);
  }

  /** With other words for what is right. */
  public Problem right(String words) {
    return new Problem(source, kind, pointer, span, found, words, nearest, correction, earlier);
  }

  /** With what to write in place of what stands there, beyond doubt. */
  public Problem corrected(String json) {
    return new Problem(source, kind, pointer, span, found, right, nearest, json, earlier);
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
    NO_PERMISSION("There is no permission to read this file"),
    NOT_READABLE("This file could not be read"),
    TOO_LARGE("This file is too large"),
    EMPTY("This file is empty"),
    OTHER_ENCODING("This file is not saved as UTF-8"),
    NOT_UTF8("This character is not saved as UTF-8"),

    // what keeps the text from being JSON
    NOT_JSON("This is not JSON"),
    NOT_A_SECTION("The file does not hold one section in { }"),
    TOO_DEEP("Brackets are nested too deep"),
    COMMA_MISSING("A comma is missing"),
    COMMA_TOO_MANY("There is an extra comma"),
    SEMICOLON("A semicolon is used in place of a comma"),
    COLON_MISSING("The colon after the name is missing"),
    COLON_TOO_MANY("There is an extra colon"),
    EQUALS_SIGN("An equals sign is used in place of a colon"),
    VALUE_MISSING("The value is missing"),
    TEXT_AFTER_VALUE("A comma or a bracket must follow the value"),
    NAME_MISSING("The name is missing"),
    NAME_NOT_QUOTED("A name is not in double quotes"),
    TEXT_NOT_QUOTED("A text is not in double quotes"),
    WORD_MISSPELT("true, false and null are written in lower case"),
    OTHER_WORD("JSON does not have this word"),
    QUOTE_INSIDE("A double quote inside a text has no backslash before it"),
    QUOTE_NOT_CLOSED("The closing double quote is missing"),
    TEXT_OVER_LINES("A text runs over more than one line"),
    SINGLE_QUOTES("Single quotes are used in place of double quotes"),
    CURLY_QUOTES("Typographic quotes are used in place of straight ones"),
    CONTROL_CHARACTER("There is a control character inside a text"),
    ESCAPE_UNKNOWN("A backslash begins an escape that JSON does not have"),
    NUMBER_MALFORMED("This number is not written as JSON has it"),
    DECIMAL_COMMA("A comma is used as the decimal point"),
    DIGITS_GROUPED("Thousands are separated in a number"),
    PLUS_SIGN("A number begins with a plus sign"),
    LONG_MINUS("A dash is used as a minus sign"),
    LEADING_ZERO("A number begins with an extra zero"),
    POINT_WITHOUT_DIGIT("A digit is missing beside a decimal point"),
    UNIT_WRITTEN("A unit is written after a number"),
    COMMA_AMBIGUOUS("A comma can be the decimal point or part thousands"),
    RANGE_WRITTEN("A range is written where one number is needed"),
    BRACKET_NOT_OPENED("An opening bracket is missing"),
    BRACKET_NOT_CLOSED("A bracket is not closed"),
    BRACKET_MISMATCHED("The closing bracket does not match the opening one"),
    BRACKET_TOO_MANY("There is an extra bracket"),
    BRACKETS_OF_OTHER_KIND("The brackets are of the wrong kind for what is in them"),
    COMMENT_NOT_CLOSED("A comment is not closed"),
    COMMENT_BY_HASH("A comment begins with a hash"),
    STRANGE_BLANK("JSON does not have this kind of space"),
    TEXT_AFTER_END("There is text after the closing bracket of the file"),

    // what reading can go on after
    NAME_TWICE("The same name is entered twice"),
    NOT_FINITE("This number is not finite"),
    TOO_SMALL_A_NUMBER("This number is too small to distinguish from zero"),
    NUMBER_TOO_LONG("This number has too many digits"),
    HALF_CHARACTER("An escape is one half of a character only"),
    TOO_MANY("There are too many problems to go on"),

    // what a described shape does not allow
    OTHER_VERSION("This is another version of the format"),
    UNKNOWN_NAME("This name is not known here"),
    WRONG_KIND("This is a value of the wrong kind"),
    NUMBER_QUOTED("A number is in quotes"),
    YES_OR_NO_QUOTED("true and false are written without quotes"),
    NOT_KNOWN_WRITTEN("A value that is not known is null"),
    NOT_FITTED_WRITTEN("What is not fitted is entered as a section"),
    OTHER_SECTION("This name belongs to another section"),
    NOT_PLAUSIBLE("This value is far from any usual one"),
    NOT_A_CHOICE("This is not one of the words to choose from"),
    OUT_OF_RANGE("This value is physically impossible"),
    UNIT_DOUBTED("This number is probably in another unit"),
    NOT_A_DATE("This is not a date"),
    NOT_A_TIME("This is not a time of day"),
    TIME_TWICE("The same time is entered twice"),
    TIME_BACKWARDS("This time is before the one above it"),
    TIME_GAP("Times are missing"),
    STEP_IRREGULAR("This time does not keep to the step of the others"),
    STEP_UNFIT("The step of the times cannot be used"),
    NOT_FITTING("This does not go with the other entries"),
    NOT_OF_TYPE("Not a value of a data sheet: it is a setting, or depends on the site"),
    NO_EQUIPMENT_FOLDER("Equipment files are named, but no equipment folder was found"),
    NO_EQUIPMENT_FILE("There is no such file in the equipment folder"),
    OUTSIDE_FOLDER("This file is not within the equipment folder"),
    SHEETS_DIFFER("Two equipment files give different values"),
    LIMIT_LOOSENED("A hazard limit is relaxed without reason and name"),
    NOT_A_RULE("The rule compiler does not accept this"),
    RULE_UNFIT("This house rule cannot be used as it is"),
    RULES_TOO_SLOW("The rule compiler did not finish"),
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

    /**
     * Whether it is about how a text is written, so that any two of the kind are the same mistake.
     */
    public boolean isOfSyntax() {
      return compareTo(NOT_JSON) >= 0 && compareTo(HALF_CHARACTER) <= 0;
    }

    /** The sentence that heads a problem of this kind. */
    public String says() {
      return says;
    }
  }
}
