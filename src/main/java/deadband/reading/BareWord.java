package deadband.reading;

import deadband.document.Gap;
import deadband.document.Literal;
import deadband.document.Problem.Kind;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What is wrong with a value that is a word without quotes, other than true, false and null. */
final class BareWord {

  static final String FINITE = "a finite number, or null where it is not known";

  private BareWord() {}

  /** What is wrong with the word, or the words, that begin here. */
  static SyntaxError error(String text, int start) {
    int end = end(text, start);
    String word = text.substring(start, end);
    String small = word.toLowerCase(Locale.ROOT);
    if (small.equals("true") || small.equals("false") || small.equals("null")) {
      return new SyntaxError(Kind.WORD_MISSPELT, start, end, small);
    }
    String meant = meant(small);
    if (meant != null) {
      Kind kind = meant.equals(FINITE) ? Kind.NOT_FINITE : Kind.OTHER_WORD;
      return new SyntaxError(kind, start, end, meant);
    }
    int quote = text.startsWith("\"", end) && endsValue(text, end + 1) ? 1 : 0;
    return new SyntaxError(Kind.TEXT_NOT_QUOTED, start, end + quote, Literal.of(word).json());
  }

  private static @Nullable String meant(String small) {
    return switch (small) {
      case "yes", "y", "on" -> "true";
      case "no", "n", "off" -> "false";
      case "none", "nil", "undefined", "unknown", "n/a", "na", "tbc", "tbd", "?" -> "null";
      case "nan", "inf", "infinity" -> FINITE;
      default -> null;
    };
  }

  /** Whether a value that ended here is followed by a comma, a bracket or the end of the line. */
  static boolean endsValue(String text, int from) {
    int at = from;
    while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == '\t')) {
      at++;
    }
    return at >= text.length()
        || ",;}]\r\n".indexOf(text.charAt(at)) >= 0
        || Gap.afterComment(text, at) > at;
  }

  /** Offset after the words up to a comma, bracket, quote, comment or the end of the line. */
  private static int end(String text, int start) {
    int at = start;
    int blank = -1;
    while (at < text.length() && !ends(text, at)) {
      blank = text.charAt(at) == ' ' ? at : blank;
      at++;
    }
    boolean name = text.startsWith(":", at) || text.startsWith("=", at);
    // "solid b: 2" lacks a comma; the last word is a name
    int end = name && blank > start ? blank : at;
    while (end > start + 1 && Gap.isBlank(text.charAt(end - 1))) {
      end--;
    }
    return Math.max(end, start + 1);
  }

  private static boolean ends(String text, int at) {
    char c = text.charAt(at);
    boolean strange = c != ' ' && Character.isSpaceChar(c);
    return c < ' ' || strange || ",;{}[]\"#:=".indexOf(c) >= 0 || Gap.afterComment(text, at) > at;
  }
}
