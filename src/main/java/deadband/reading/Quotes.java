package deadband.reading;

/** What stands in double quotes, as JSON writes it (RFC 8259, section 7). */
final class Quotes {

  private Quotes() {}

  /**
   * Offset of the quote that closes a text.
   *
   * @param open offset of the opening quote
   * @return the length of the text where none does
   */
  static int close(String text, int open) {
    int at = open + 1;
    while (at < text.length() && text.charAt(at) != '"') {
      at += text.charAt(at) == '\\' ? 2 : 1;
    }
    return Math.min(at, text.length());
  }

  /** Whether a surrogate stands alone, which is no character (RFC 8259, section 8.2). */
  static boolean hasHalfCharacter(String value) {
    for (int i = 0; i < value.length(); i += Character.charCount(value.codePointAt(i))) {
      if (Character.getType(value.codePointAt(i)) == Character.SURROGATE) {
        return true;
      }
    }
    return false;
  }
}
