package deadband.reading;

import deadband.document.Gap;
import deadband.document.Literal;
import deadband.document.Problem.Kind;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What is wrong with a number that people write and JSON does not: 3,5 and 03 and 1 000 and 3 kW.
 *
 * <p>JSON's own form is in RFC 8259, section 6.
 */
final class MalformedNumber {

  private static final String FORM = "digits, with a point before decimals: 3.5";

  /** More characters than a number that can be understood has. */
  private static final int LONGEST = 200;

  /** As an item of a list: a comma or a blank ends it. */
  private static final Pattern LISTED =
      form("\\d{1,3}(?:[_'’`]\\d{3})+(?:\\.\\d+)?|\\d{1,3}(?:\\.\\d{3}){2,}", "");

  /** As the value of a name, after which no other number may come. */
  private static final Pattern NAMED =
      form(
          "\\d{1,3}(?:[_'’`\\h]\\d{3})+(?:[.,]\\d+)?|\\d{1,3}(?:,\\d{3})+\\.\\d+"
              + "|\\d{1,3}(?:\\.\\d{3})+,\\d+|\\d{1,3}(?:,\\d{3}){2,}|\\d{1,3}(?:\\.\\d{3}){2,}",
          "(?<comma>\\d*,\\d+)|");

  private static final Pattern THOUSANDS = Pattern.compile("[1-9]\\d{0,2},\\d{3}");
  private static final Pattern RANGE =
      Pattern.compile("(\\d+(?:\\.\\d+)?)(?:[-–—]|\\.\\.\\.?)(\\d+(?:\\.\\d+)?)");
  private static final Pattern NOT_FINITE =
      Pattern.compile("[-+]?(?:nan|inf|infinity)", Pattern.CASE_INSENSITIVE);
  private static final Pattern DATE_OR_TIME =
      Pattern.compile("\\d{4}-\\d{1,2}-\\d{1,2}\\S*|\\d{1,2}:\\d{2}\\S*");

  private MalformedNumber() {}

  private static Pattern form(String grouped, String comma) {
    return Pattern.compile(
        "(?<sign>[-+−–—‒]?)(?<gap>\\h?)(?:(?<grouped>"
            + grouped
            + ")|"
            + comma
            + "(?<plain>\\d+\\.?\\d*|\\.\\d+))(?<exponent>(?:[eE][+-]?\\d+)?)"
            + "(?<unit>\\h*+(?![xX]|[eE](?!\\p{L})|(?:true|false|null)\\b)[\\p{L}%°‰€µ²³]"
            + "(?:(?!/[/*])[^\\s\\h,;{}\\[\\]\"#:=])*+(?!\\h*[:=]))?"
            + "(?=[\\s\\h,;{}\\[\\]\"#=]|:(?!\\d)|/[/*]|\\z)");
  }

  /**
   * What is wrong with the number that begins here.
   *
   * @param named whether it is the value of a name
   * @return null where the number is written right
   */
  static @Nullable SyntaxError error(String text, int start, boolean named) {
    int bound = Math.min(text.length(), Figures.end(text, start) + LONGEST);
    Matcher form = (named ? NAMED : LISTED).matcher(text).region(start, bound);
    if (form.lookingAt() && (form.end() < bound || bound == text.length())) {
      Kind kind = kind(form, named);
      return kind == null ? null : new SyntaxError(kind, start, form.end(), right(form, named));
    }
    return other(text, start);
  }

  private static SyntaxError other(String text, int start) {
    int end = Math.max(runEnd(text, start), start + 1);
    String run = text.substring(start, end);
    Matcher range = RANGE.matcher(run);
    if (range.matches()) {
      String one = "one number: " + range.group(1) + " or " + range.group(2);
      return new SyntaxError(Kind.RANGE_WRITTEN, start, end, one);
    }
    if (NOT_FINITE.matcher(run).matches()) {
      return new SyntaxError(Kind.NOT_FINITE, start, end, BareWord.FINITE);
    }
    return DATE_OR_TIME.matcher(run).matches()
        ? new SyntaxError(Kind.TEXT_NOT_QUOTED, start, end, Literal.of(run).json())
        : new SyntaxError(Kind.NUMBER_MALFORMED, start, end, FORM);
  }

  private static @Nullable Kind kind(Matcher form, boolean named) {
    String sign = form.group("sign");
    String plain = form.group("plain");
    if (form.group("grouped") != null) {
      return Kind.DIGITS_GROUPED;
    }
    if (named && form.group("comma") != null) {
      boolean either = THOUSANDS.matcher(form.group("comma")).matches();
      return either ? Kind.COMMA_AMBIGUOUS : Kind.DECIMAL_COMMA;
    }
    if (!sign.isEmpty() && !sign.equals("-")) {
      return sign.equals("+") ? Kind.PLUS_SIGN : Kind.LONG_MINUS;
    }
    if (!form.group("gap").isEmpty()) {
      return Kind.NUMBER_MALFORMED;
    }
    if (plain.length() > 1 && plain.charAt(0) == '0' && plain.charAt(1) != '.') {
      return Kind.LEADING_ZERO;
    }
    if (plain.startsWith(".") || plain.endsWith(".")) {
      return Kind.POINT_WITHOUT_DIGIT;
    }
    return form.group("unit") == null ? null : Kind.UNIT_WRITTEN;
  }

  /** The number that was meant; a text that is none where that is not sure. */
  private static String right(Matcher form, boolean named) {
    String comma = named ? form.group("comma") : null;
    String sign = form.group("sign").isEmpty() || form.group("sign").equals("+") ? "" : "-";
    String number = sign + digits(form, comma) + form.group("exponent");
    return comma != null && THOUSANDS.matcher(comma).matches()
        ? number.replaceFirst("\\.?0+$", "")
            + " or "
            + sign
            + comma.replace(",", "")
            + ": write the one that is meant without a comma"
        : number;
  }

  private static String digits(Matcher form, @Nullable String comma) {
    String grouped = form.group("grouped");
    String digits = comma == null ? form.group("plain") : comma;
    if (grouped != null) {
      char mark = grouped.charAt(Figures.digits(grouped, 0));
      digits = grouped.replace(String.valueOf(mark), "");
    }
    String pointed = digits.replace(',', '.').replaceFirst("^0+(?=\\d)", "");
    return (pointed.startsWith(".") ? "0" : "") + pointed + (pointed.endsWith(".") ? "0" : "");
  }

  /** Offset after what was meant as one value: up to a blank, comma, bracket, quote or comment. */
  static int runEnd(String text, int start) {
    int at = start;
    while (at < text.length() && !ends(text, at)) {
      at++;
    }
    return at;
  }

  private static boolean ends(String text, int at) {
    char c = text.charAt(at);
    if (c == ':') {
      return at + 1 == text.length() || !Figures.isDigit(text.charAt(at + 1));
    }
    return c <= ' '
        || ",;{}[]\"#".indexOf(c) >= 0
        || Character.isSpaceChar(c)
        || Gap.afterComment(text, at) > at;
  }
}
