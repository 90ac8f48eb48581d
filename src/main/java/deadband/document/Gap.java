package deadband.document;

/**
 * What stands between two values: blanks, comments, a comma. Works on the text alone, so that an
 * edit can leave all of it as it is.
 */
public final class Gap {

  private Gap() {}

  /** Offset of the first character from a place on that is neither blank nor comment. */
  public static int next(String text, int from) {
    int at = from;
    while (at < text.length()) {
      int after = isBlank(text.charAt(at)) ? at + 1 : afterComment(text, at);
      if (after == at) {
        return at;
      }
      at = after;
    }
    return text.length();
  }

  /**
   * End of what was last written before a bracket: a value, a comma or a comment.
   *
   * @param from end of the last value, its comma, or of the opening bracket
   * @param close offset of the closing bracket
   */
  static int lastWritten(String text, int from, int close) {
    int written = from;
    for (int at = from; at < close; ) {
      int after = afterComment(text, at);
      if (after > at) {
        written = after;
      }
      at = Math.max(after, at + 1);
    }
    return written;
  }

  /**
   * End of a comment that begins here, its line end not counted; the same place where none does.
   */
  public static int afterComment(String text, int at) {
    if (text.startsWith("//", at)) {
      return lineEnd(text, at);
    }
    if (text.startsWith("/*", at)) {
      int close = text.indexOf("*/", at + 2);
      return close < 0 ? text.length() : close + 2;
    }
    return at;
  }

  /** Offset of the end of the line that holds a place. */
  public static int lineEnd(String text, int from) {
    int at = from;
    while (at < text.length() && !isLineEnd(text.charAt(at))) {
      at++;
    }
    return at;
  }

  /** Offset of the start of the line that holds a place. */
  public static int lineStart(String text, int from) {
    int at = from;
    while (at > 0 && !isLineEnd(text.charAt(at - 1))) {
      at--;
    }
    return at > 0 || text.indexOf(Source.MARK) != 0 ? at : 1;
  }

  /** Offset after the line end that stands here; the same place where none does. */
  static int afterLineEnd(String text, int at) {
    if (text.startsWith("\r\n", at)) {
      return at + 2;
    }
    return at < text.length() && isLineEnd(text.charAt(at)) ? at + 1 : at;
  }

  static boolean hasLineEnd(String text, int from, int to) {
    return lineEnd(text, from) < to;
  }

  /** Whether nothing but blanks stands between two places. */
  public static boolean isBlank(String text, int from, int to) {
    for (int at = from; at < to; at++) {
      if (!isBlank(text.charAt(at))) {
        return false;
      }
    }
    return true;
  }

  /** Blank as RFC 8259, section 2 has it. */
  public static boolean isBlank(char c) {
    return c == ' ' || c == '\t' || isLineEnd(c);
  }

  public static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r';
  }
}
