package deadband.reading;

/** Numbers as JSON writes them (RFC 8259, section 6). */
final class Figures {

  private Figures() {}

  /** Whether a digit other than zero stands before the exponent. */
  static boolean isOtherThanZero(String literal) {
    for (int i = 0; i < literal.length(); i++) {
      char c = literal.charAt(i);
      if (c == 'e' || c == 'E') {
        return false;
      }
      if (c >= '1' && c <= '9') {
        return true;
      }
    }
    return false;
  }

  /**
   * Where the number ends that begins here: {@code -? (0 | 1-9 digits) (. digits)? (e +-? digits)?}
   *
   * @return the start where none begins
   */
  static int end(String text, int start) {
    int whole = text.startsWith("-", start) ? start + 1 : start;
    int at = text.startsWith("0", whole) ? whole + 1 : digits(text, whole);
    if (at == whole) {
      return start;
    }
    int fraction = text.startsWith(".", at) ? digits(text, at + 1) : at;
    at = fraction > at + 1 ? fraction : at;
    return exponentEnd(text, at);
  }

  private static int exponentEnd(String text, int at) {
    if (!text.startsWith("e", at) && !text.startsWith("E", at)) {
      return at;
    }
    boolean signed = text.startsWith("+", at + 1) || text.startsWith("-", at + 1);
    int first = signed ? at + 2 : at + 1;
    int end = digits(text, first);
    return end > first ? end : at;
  }

  /** Offset after the digits that begin here. */
  static int digits(String text, int from) {
    int at = from;
    while (at < text.length() && isDigit(text.charAt(at))) {
      at++;
    }
    return at;
  }

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
