package deadband.reading;

import deadband.document.Gap;
import deadband.document.Literal;
import deadband.document.Problem.Kind;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What is wrong with a value that is a word without quotes. */
final class WordSlip {

  private WordSlip() {}

  /**
   * The slip in the word that begins here.
   *
   * @return null where it is one that reading knows
   */
  static @Nullable Slip of(String text, int start) {
    int end = end(text, start);
    String word = text.substring(start, end);
    if (isKnown(word) || isKnown(firstOf(word))) {
      return null;
    }
    String small = word.toLowerCase(Locale.ROOT);
    if (isKnown(small)) {
      return new Slip(Kind.WORD_MISSPELT, end, small);
    }
    String meant = meant(small);
    return meant == null
        ? new Slip(Kind.TEXT_NOT_QUOTED, end, Literal.of(word).json())
        : new Slip(Kind.OTHER_WORD, end, meant);
  }

  private static boolean isKnown(String word) {
    return word.equals("true")
        || word.equals("false")
        || word.equals("null")
        || Figures.isWord(word);
  }

  private static @Nullable String meant(String small) {
    return switch (small) {
      case "yes", "y", "on" -> "true";
      case "no", "n", "off" -> "false";
      case "none", "nil", "undefined", "unknown", "n/a", "na" -> "null";
      case "nan", "inf", "infinity" -> "a finite number, or null where it is not known";
      default -> null;
    };
  }

  private static String firstOf(String words) {
    int blank = words.indexOf(' ');
    return blank < 0 ? words : words.substring(0, blank);
  }

  /** Offset after the words up to a comma, bracket, quote, comment or the end of the line. */
  private static int end(String text, int start) {
    int at = start;
    while (at < text.length() && !ends(text, at)) {
      at++;
    }
    while (at > start + 1 && Gap.isBlank(text.charAt(at - 1))) {
      at--;
    }
    return at;
  }

  private static boolean ends(String text, int at) {
    char c = text.charAt(at);
    boolean strange = c != ' ' && Character.isSpaceChar(c);
    return c < ' ' || strange || ",;{}[]\"#:=".indexOf(c) >= 0 || Gap.afterComment(text, at) > at;
  }
}
