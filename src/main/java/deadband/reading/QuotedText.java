package deadband.reading;

import deadband.document.Gap;
import deadband.document.Literal;
import deadband.document.Problem.Kind;
import java.util.function.Consumer;

/** A text in double quotes (RFC 8259, section 7), and what people write in place of them. */
final class QuotedText {

  private static final String TYPOGRAPHIC = "“”„‟«»‹›‘’‚‛″′";
  private static final String SINGLE = "'`";
  private static final String ESCAPES = "\"\\/bfnrt";
  private static final String ESCAPED = "\"\\/\b\f\n\r\t";
  private static final int CODE = 6;

  private final String text;
  private final Consumer<SyntaxError> errors;
  private final StringBuilder value = new StringBuilder();
  private int at;

  private QuotedText(String text, int open, Consumer<SyntaxError> errors) {
    this.text = text;
    this.errors = errors;
    this.at = open + 1;
  }

  /**
   * Reads up to the closing quote, or to the end of the line where there is none.
   *
   * @param open offset of the opening quote
   * @param errors takes what is wrong between the quotes
   */
  static QuotedText read(String text, int open, Consumer<SyntaxError> errors) {
    QuotedText quoted = new QuotedText(text, open, errors);
    while (!quoted.isAtEnd() && !quoted.isClosed()) {
      quoted.character();
    }
    return quoted;
  }

  /** The text as meant, escapes undone. */
  String value() {
    return value.toString();
  }

  boolean isClosed() {
    return at < text.length() && text.charAt(at) == '"';
  }

  /** Offset of the closing quote, or of the end of the line. */
  int close() {
    return at;
  }

  /** Offset of the quote that closes a text, or of the end of its line where none does. */
  static int close(String text, int open) {
    return read(text, open, error -> {}).at;
  }

  /** Whether a quote stands here that JSON does not use. */
  static boolean isForeign(char c) {
    return TYPOGRAPHIC.indexOf(c) >= 0 || SINGLE.indexOf(c) >= 0;
  }

  /** What is wrong with a text that has this quote at one of its ends. */
  static Kind kindOf(char quote) {
    return TYPOGRAPHIC.indexOf(quote) >= 0
        ? Kind.CURLY_QUOTES
        : SINGLE.indexOf(quote) >= 0 ? Kind.SINGLE_QUOTES : Kind.QUOTE_NOT_CLOSED;
  }

  private boolean isAtEnd() {
    return at >= text.length() || Gap.isLineEnd(text.charAt(at));
  }

  private void character() {
    char c = text.charAt(at);
    if (c == '\\') {
      escape();
      return;
    }
    if (c < ' ') {
      String right = Literal.of(String.valueOf(c)).json();
      error(Kind.CONTROL_CHARACTER, at + 1, right.substring(1, right.length() - 1));
    }
    value.append(c);
    at++;
  }

  private void escape() {
    char c = at + 1 < text.length() ? text.charAt(at + 1) : '\n';
    int known = ESCAPES.indexOf(c);
    if (known >= 0) {
      value.append(ESCAPED.charAt(known));
      at += 2;
    } else if (isCode(at)) {
      code();
    } else if (Gap.isLineEnd(c)) {
      at++;
    } else {
      unknownEscape(c);
    }
  }

  private void code() {
    char c = code(at);
    if (Character.isSurrogate(c) && !hasOtherHalf(c)) {
      error(Kind.HALF_CHARACTER, at + CODE, "the whole character");
    }
    value.append(c);
    at += CODE;
  }

  private boolean hasOtherHalf(char half) {
    if (Character.isLowSurrogate(half)) {
      return !value.isEmpty() && Character.isHighSurrogate(value.charAt(value.length() - 1));
    }
    int next = at + CODE;
    boolean low = next < text.length() && Character.isLowSurrogate(text.charAt(next));
    return low || (isCode(next) && Character.isLowSurrogate(code(next)));
  }

  private void unknownEscape(char c) {
    int end = at + 1 + Character.charCount(text.codePointAt(at + 1));
    while (c == 'u' && end < at + CODE && end < text.length() && isLetter(text.charAt(end))) {
      end++;
    }
    String meant = c == '\'' ? "'" : "\\" + text.substring(at, end);
    error(Kind.ESCAPE_UNKNOWN, end, c == 'u' ? "\\u and four digits 0 to 9, A to F" : meant);
    value.append(text, at, end);
    at = end;
  }

  private static boolean isLetter(char c) {
    return Character.isLetterOrDigit(c);
  }

  private char code(int from) {
    return (char) Integer.parseInt(text, from + 2, from + CODE, 16);
  }

  private boolean isCode(int from) {
    if (!text.startsWith("\\u", from) || from + CODE > text.length()) {
      return false;
    }
    for (int i = from + 2; i < from + CODE; i++) {
      // no digits of other scripts, which Character.digit would take
      if (text.charAt(i) > 'f' || Character.digit(text.charAt(i), 16) < 0) {
        return false;
      }
    }
    return true;
  }

  private void error(Kind kind, int end, String right) {
    errors.accept(new SyntaxError(kind, at, end, right));
  }
}
