package deadband.paste;

import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts sentences together that a mail program has broken into lines of a fixed width: the line end
 * becomes a blank, so that every place stays what it was.
 */
final class SoftWraps {

  /** Mail programs break lines at about 72 characters, some between 60 and 100: common practice. */
  private static final int NARROWEST = 60;

  private static final int WIDEST = 110;

  private static final Set<String> GOES_ON =
      Set.of(
          "a", "an", "the", "and", "or", "but", "of", "to", "at", "in", "on", "is", "are", "with",
          "for", "from", "by", "which", "that", "when", "it", "we", "i", "my", "our", "der", "die",
          "das", "den", "dem", "ein", "eine", "und", "mit", "bei", "auf", "von", "ist", "het",
          "een", "en", "van", "met", "op", "bij", "le", "la", "les", "un", "une", "et", "de", "du",
          "avec", "est", "à");

  private static final Pattern LABELLED =
      Pattern.compile("\\s*(?:[-*•·▪◦○●►‣#|]|\\(?\\w{1,2}[.)]\\s|[^.,:=]{1,40}[:=]).*");

  private static final Pattern WORD = Pattern.compile("\\S+");

  private SoftWraps() {}

  static String joined(String text) {
    List<String> lines = List.of(text.split("\n", -1));
    StringBuilder joined = new StringBuilder(text);
    int end = -1;
    for (int i = 0; i + 1 < lines.size(); i++) {
      end += lines.get(i).length() + 1;
      if (goesOn(lines, i)) {
        joined.setCharAt(end, ' ');
      }
    }
    return joined.toString();
  }

  private static boolean goesOn(List<String> lines, int i) {
    String line = lines.get(i).stripTrailing();
    String next = lines.get(i + 1).strip();
    int width = width(lines, i);
    Matcher first = WORD.matcher(next);
    boolean full = first.find() && line.length() + 1 + first.group().length() > width;
    boolean prose = line.indexOf('\t') < 0 && !line.matches(".*[.:;!?|]") && !isLabelled(next);
    if (!full || !prose || width < NARROWEST || width > WIDEST) {
      return false;
    }
    char c = next.charAt(0);
    String last = line.substring(line.lastIndexOf(' ') + 1);
    return Character.isLowerCase(c)
        || Character.isDigit(c)
        || last.endsWith(",")
        || GOES_ON.contains(Scanner.normal(last));
  }

  private static boolean isLabelled(String line) {
    return LABELLED.matcher(line).matches();
  }

  /** The longest line of the paragraph. */
  private static int width(List<String> lines, int i) {
    int from = i;
    while (from > 0 && !lines.get(from - 1).isBlank()) {
      from--;
    }
    int width = 0;
    for (int at = from; at < lines.size() && !lines.get(at).isBlank(); at++) {
      width = Math.max(width, lines.get(at).stripTrailing().length());
    }
    return width;
  }
}
