package deadband.paste;

import deadband.document.Span;
import java.util.Arrays;
import java.util.Map;

/**
 * A pasted text without what mail programs and web pages put into it: HTML entities and tags,
 * non-breaking spaces, typographic quotes and dashes, the marks of a reply. Every character knows
 * where it stood.
 */
public final class CleanText {

  private static final Map<String, Character> ENTITIES =
      Map.of(
          "quot", '"', "amp", '&', "lt", '<', "gt", '>', "nbsp", ' ', "deg", '°', "apos", '\'',
          "middot", '·', "ndash", '-', "minus", '-');

  private static final int LONGEST_ENTITY = 8;
  private static final int LONGEST_TAG = 200;

  private final String raw;
  private final StringBuilder text = new StringBuilder();
  private int[] offsets = new int[256];

  private CleanText(String raw) {
    this.raw = raw;
  }

  /** Cleans a text. */
  public static CleanText of(String raw) {
    CleanText clean = new CleanText(raw);
    clean.read();
    return clean;
  }

  public String text() {
    return text.toString();
  }

  /** Where a stretch of the clean text stands in the text as it was pasted. */
  public Span original(int start, int end) {
    int from = start < text.length() ? offsets[start] : raw.length();
    return new Span(from, end > start ? offsets[end - 1] + 1 : from);
  }

  private void read() {
    boolean lineStart = true;
    for (int at = 0; at < raw.length(); ) {
      char c = raw.charAt(at);
      int after = lineStart ? afterReplyMark(at) : at;
      if (after > at) {
        at = after;
        continue;
      }
      int next = c == '&' ? entity(at) : c == '<' ? tag(at) : at;
      if (next == at) {
        add(plain(c), at);
        next = at + 1;
      }
      lineStart = c == '\n' || c == '\r' || (lineStart && (c == ' ' || c == '\t'));
      at = next;
    }
  }

  private int afterReplyMark(int at) {
    boolean entity = raw.startsWith("&gt;", at);
    return entity ? at + 4 : raw.charAt(at) == '>' ? at + 1 : at;
  }

  private int entity(int at) {
    int end = raw.indexOf(';', at);
    if (end < 0 || end - at > LONGEST_ENTITY + 1) {
      return at;
    }
    String name = raw.substring(at + 1, end);
    Character c = name.matches("#\\d{1,5}") ? code(name) : ENTITIES.get(name);
    if (c == null) {
      return at;
    }
    add(plain(c), at);
    return end + 1;
  }

  private static Character code(String name) {
    int code = Integer.parseInt(name.substring(1));
    return code <= Character.MAX_VALUE ? (char) code : ' ';
  }

  /** A tag of HTML; one that ends a cell or a line is read as such. */
  private int tag(int at) {
    int end = raw.indexOf('>', at);
    if (end < 0
        || end - at > LONGEST_TAG
        || !raw.substring(at, end + 1).matches("</?[a-zA-Z][^<]*>")) {
      return at;
    }
    String name = raw.substring(at, end).replaceAll("[</]", "").split("\\s", 2)[0];
    boolean line = name.matches("(?i)br|tr|p|li|div|h\\d");
    add(line ? '\n' : name.matches("(?i)t[dh]") ? '\t' : ' ', at);
    return end + 1;
  }

  private static char plain(char c) {
    return switch (c) {
      case '“', '”', '„', '«', '»', '″' -> '"';
      case '‘', '’', '‚', '`', '´', '′' -> '\'';
      case '‐', '‑', '‒', '–', '—', '−' -> '-';
      case '…' -> '.';
      case '→' -> '=';
      case '\r' -> '\n';
      case '\f', '\u000b' -> ' ';
      default -> Character.isSpaceChar(c) || Character.getType(c) == Character.FORMAT ? ' ' : c;
    };
  }

  private void add(char c, int at) {
    if (text.length() == offsets.length) {
      offsets = Arrays.copyOf(offsets, 2 * offsets.length);
    }
    offsets[text.length()] = at;
    text.append(c);
  }
}
