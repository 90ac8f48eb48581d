package deadband.reading;

import deadband.document.Gap;
import deadband.document.Literal;
import deadband.document.Problem.Kind;
import org.jspecify.annotations.Nullable;

/** What is wrong with a text in quotes, of whatever kind. */
final class QuoteSlip {

  private static final String CURLY = "“”„‟«»‹›‘’‚‛″′";
  private static final String SINGLE = "'`";

  private QuoteSlip() {}

  /** Whether a quote stands here that JSON does not know. */
  static boolean isForeign(char c) {
    return CURLY.indexOf(c) >= 0 || SINGLE.indexOf(c) >= 0;
  }

  /** The slip in a text that begins with a foreign quote. */
  static Slip foreign(String text, int start) {
    Kind kind = CURLY.indexOf(text.charAt(start)) >= 0 ? Kind.CURLY_QUOTES : Kind.SINGLE_QUOTES;
    int line = Gap.lineEnd(text, start);
    int close = start + 1;
    while (close < line && !isForeign(text.charAt(close)) && text.charAt(close) != '"') {
      close++;
    }
    if (close == line) {
      return new Slip(kind, start + 1, "\"");
    }
    return new Slip(kind, close + 1, Literal.of(text.substring(start + 1, close)).json());
  }

  /**
   * The slip in a text that begins with a double quote (RFC 8259, section 7).
   *
   * @param start offset of the opening quote
   * @return where and what, or null where the text is right
   */
  static @Nullable Found within(String text, int start) {
    for (int at = start + 1; at < text.length(); at++) {
      char c = text.charAt(at);
      if (c == '"') {
        return null;
      }
      if (Gap.isLineEnd(c)) {
        return notClosed(start, at);
      }
      if (c < ' ') {
        String right = Literal.of(String.valueOf(c)).json();
        Slip slip =
            new Slip(Kind.CONTROL_CHARACTER, at + 1, right.substring(1, right.length() - 1));
        return new Found(at, slip);
      }
      if (c == '\\') {
        int length = escapeLength(text, at);
        if (length == 0) {
          return unknownEscape(text, start, at);
        }
        at += length - 1;
      }
    }
    return notClosed(start, text.length());
  }

  /**
   * The escape in a name that stands for half a character. In a text the parser lets it pass, and
   * reading reports it; in a name the parser ends there.
   *
   * @param start offset of the opening quote
   * @param close offset of the closing quote
   * @return null where the name has none
   */
  static @Nullable Found halfCharacter(String text, int start, int close) {
    for (int at = start + 1; at < close; at++) {
      if (text.charAt(at) != '\\') {
        continue;
      }
      int length = escapeLength(text, at);
      boolean pair = length == 6 && isHigh(text, at) && isLow(text, at + 6);
      if (length == 6 && !pair && (isHigh(text, at) || isLow(text, at))) {
        return new Found(at, new Slip(Kind.HALF_CHARACTER, at + 6, "the character itself"));
      }
      at += (pair ? 12 : length) - 1;
    }
    return null;
  }

  private static boolean isHigh(String text, int at) {
    return isCode(text, at) && Character.isHighSurrogate(code(text, at));
  }

  private static boolean isLow(String text, int at) {
    return isCode(text, at) && Character.isLowSurrogate(code(text, at));
  }

  private static boolean isCode(String text, int at) {
    return text.startsWith("\\u", at) && escapeLength(text, at) == 6;
  }

  private static char code(String text, int at) {
    return (char) Integer.parseInt(text.substring(at + 2, at + 6), 16);
  }

  /** A slip with the offset where it begins. */
  record Found(int start, Slip slip) {}

  private static Found notClosed(int start, int end) {
    return new Found(start, new Slip(Kind.QUOTE_NOT_CLOSED, end, "\" at the end of the text"));
  }

  private static @Nullable Found unknownEscape(String text, int start, int at) {
    int next = at + 1;
    if (next >= text.length() || Gap.isLineEnd(text.charAt(next))) {
      return notClosed(start, next);
    }
    boolean code = text.charAt(next) == 'u';
    int end = code ? Math.min(at + 6, Gap.lineEnd(text, at)) : at + 1 + width(text, next);
    String right = code ? "\\u and four digits 0 to 9, A to F" : "\\\\ where a backslash is meant";
    return new Found(at, new Slip(Kind.ESCAPE_UNKNOWN, end, right));
  }

  private static int width(String text, int at) {
    return Character.charCount(text.codePointAt(at));
  }

  /** Characters the escape here has; 0 where JSON knows none such. */
  private static int escapeLength(String text, int at) {
    if (at + 1 >= text.length()) {
      return 0;
    }
    char c = text.charAt(at + 1);
    if (c == 'u') {
      return hasFourHexDigits(text, at + 2) ? 6 : 0;
    }
    return "\"\\/bfnrt".indexOf(c) >= 0 ? 2 : 0;
  }

  private static boolean hasFourHexDigits(String text, int from) {
    if (from + 4 > text.length()) {
      return false;
    }
    for (int i = from; i < from + 4; i++) {
      // no digits of other scripts, which Character.digit would take
      if (text.charAt(i) > 'f' || Character.digit(text.charAt(i), 16) < 0) {
        return false;
      }
    }
    return true;
  }
}
