package deadband.reading;

import deadband.document.Gap;
import deadband.document.Literal;
import deadband.document.Problem.Kind;
import org.jspecify.annotations.Nullable;

/**
 * What is wrong with a number that people write and JSON does not: 3,5 and 03 and 1 000 and 3kW.
 *
 * <p>JSON's own form is in RFC 8259, section 6.
 */
final class NumberSlip {

  private static final String FORM = "digits, with a point before decimals: 3.5";
  private static final String GROUP_MARKS = "_'’`";

  private final String text;
  private final int start;
  private final int end;
  private final String run;

  private NumberSlip(String text, int start) {
    this.text = text;
    this.start = start;
    this.end = Figures.end(text, start);
    this.run = text.substring(start, runEnd(text, start));
  }

  /**
   * The slip in the number that begins here.
   *
   * @param named whether the number is the value of a name, so that no other number may follow it
   * @return null where the number is written right
   */
  static @Nullable Slip of(String text, int start, boolean named) {
    NumberSlip number = new NumberSlip(text, start);
    if (Figures.isWord(number.run)) {
      return null;
    }
    boolean right = number.end > start && number.end == start + number.run.length();
    return right ? number.following(named) : number.within();
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

  private Slip within() {
    int runEnd = start + run.length();
    if (isDateOrTime()) {
      return new Slip(Kind.TEXT_NOT_QUOTED, runEnd, Literal.of(run).json());
    }
    Slip slip = leadingZero(runEnd);
    slip = slip != null ? slip : bareGroups(runEnd);
    slip = slip != null ? slip : barePoint(runEnd);
    slip = slip != null ? slip : unit(runEnd);
    return slip != null ? slip : new Slip(Kind.NUMBER_MALFORMED, Math.max(runEnd, start + 1), FORM);
  }

  /** Digits parted by dashes or colons: 2026-05-01, 12:30. */
  private boolean isDateOrTime() {
    boolean parted = false;
    for (int i = 0; i < run.length(); i++) {
      char c = run.charAt(i);
      parted |= i > 0 && (c == '-' || c == ':');
      if (!Figures.isDigit(c) && "-:TZ".indexOf(c) < 0) {
        return false;
      }
    }
    return parted && Figures.isDigit(run.charAt(0)) && !run.endsWith("-");
  }

  private @Nullable Slip leadingZero(int runEnd) {
    String sign = run.startsWith("-") ? "-" : "";
    int first = sign.length();
    while (run.startsWith("0", first) && first + 1 < run.length()) {
      if (!Figures.isDigit(run.charAt(first + 1))) {
        break;
      }
      first++;
    }
    return first == sign.length()
        ? null
        : ifNumber(Kind.LEADING_ZERO, runEnd, sign + run.substring(first));
  }

  private @Nullable Slip bareGroups(int runEnd) {
    StringBuilder bare = new StringBuilder();
    for (int i = 0; i < run.length(); i++) {
      if (GROUP_MARKS.indexOf(run.charAt(i)) < 0) {
        bare.append(run.charAt(i));
      }
    }
    return bare.length() == run.length()
        ? null
        : ifNumber(Kind.DIGITS_GROUPED, runEnd, bare.toString());
  }

  private @Nullable Slip barePoint(int runEnd) {
    String before = run.startsWith("-.") ? "-0" + run.substring(1) : run;
    String whole = before.startsWith(".") ? "0" + before : before;
    whole = whole.endsWith(".") ? whole + "0" : whole;
    return whole.equals(run) ? null : ifNumber(Kind.POINT_WITHOUT_DIGIT, runEnd, whole);
  }

  private @Nullable Slip unit(int runEnd) {
    if (end == start) {
      return null;
    }
    String rest = text.substring(end, runEnd);
    boolean hex = rest.startsWith("x") || rest.startsWith("X");
    boolean exponent = rest.equals("e") || rest.equals("E") || rest.indexOf('+') == 1;
    boolean written = !hex && !exponent && isUnit(rest.codePointAt(0));
    return written ? new Slip(Kind.UNIT_WRITTEN, runEnd, text.substring(start, end)) : null;
  }

  private static boolean isUnit(int code) {
    return Character.isLetter(code) || code == '%' || code == '°' || code == '‰' || code == '€';
  }

  private static @Nullable Slip ifNumber(Kind kind, int end, String right) {
    return Figures.end(right, 0) == right.length() && !right.isEmpty()
        ? new Slip(kind, end, right)
        : null;
  }

  /** What is wrong with what follows a number that is right by itself. */
  private @Nullable Slip following(boolean named) {
    if (end == text.length()) {
      return null;
    }
    if (text.charAt(end) == ',') {
      return named ? comma() : null;
    }
    int next = end;
    while (next < text.length() && isSpace(text.charAt(next))) {
      next++;
    }
    if (next == end || next == text.length()) {
      return null;
    }
    return isUnit(text.codePointAt(next)) ? partedUnit(next) : named ? partedGroups() : null;
  }

  private static boolean isSpace(char c) {
    return c == ' ' || Character.getType(c) == Character.SPACE_SEPARATOR;
  }

  /** 3,5 or 1,234.5 or 1.234,5 as the value of a name: a name would have to follow the comma. */
  private @Nullable Slip comma() {
    int decimals = Figures.digits(text, end + 1);
    if (decimals == end + 1) {
      return null;
    }
    String whole = text.substring(start, end);
    String after = text.substring(end + 1, decimals);
    if (whole.indexOf('.') >= 0) {
      return ifNumber(Kind.DIGITS_GROUPED, decimals, whole.replace(".", "") + "." + after);
    }
    int more = Figures.end(text, end + 1);
    return after.length() == 3 && more > decimals
        ? ifNumber(Kind.DIGITS_GROUPED, more, whole + text.substring(end + 1, more))
        : ifNumber(Kind.DECIMAL_COMMA, decimals, whole + "." + after);
  }

  /** 1 000: groups of three digits parted by a blank. */
  private @Nullable Slip partedGroups() {
    StringBuilder digits = new StringBuilder(text.substring(start, end));
    int at = end;
    while (at < text.length() && isSpace(text.charAt(at))) {
      int group = Figures.digits(text, at + 1);
      if (group != at + 4) {
        break;
      }
      digits.append(text, at + 1, group);
      at = group;
    }
    return at == end ? null : ifNumber(Kind.DIGITS_GROUPED, at, digits.toString());
  }

  /** 3 kW; but in {@code 1 b: 2} it is a comma that is missing. */
  private @Nullable Slip partedUnit(int next) {
    int unitEnd = runEnd(text, next);
    String word = text.substring(next, unitEnd);
    int after = Gap.next(text, unitEnd);
    boolean name = text.startsWith(":", after) || text.startsWith("=", after);
    boolean value = word.equals("true") || word.equals("false") || word.equals("null");
    return name || value ? null : new Slip(Kind.UNIT_WRITTEN, unitEnd, text.substring(start, end));
  }
}
