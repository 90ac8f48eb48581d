package deadband.document;

import java.util.Arrays;

/**
 * Text as a terminal may safely show it, and the cells it takes there.
 *
 * <p>A setup file comes from anywhere. Control characters, line ends and characters that turn the
 * direction of writing are shown by their numbers, so that no file can drive the terminal or look
 * like something else than it holds.
 */
public final class Printable {

  private static final int EMOJI_SIGN = 0xFE0F;

  /**
   * First and last code points of the ranges that take two cells: East Asian Width W and F (Unicode
   * Standard Annex 11) of Unicode 17, taken from the wcwidth library 0.7.0 for Python and joined
   * where what lies between is unassigned.
   */
  private static final int[] WIDE = {
    0x1100, 0x115F, 0x231A, 0x231B, 0x2329, 0x232A, 0x23E9, 0x23EC, 0x23F0, 0x23F0, 0x23F3, 0x23F3,
    0x25FD, 0x25FE, 0x2614, 0x2615, 0x2630, 0x2637, 0x2648, 0x2653, 0x267F, 0x267F, 0x268A, 0x268F,
    0x2693, 0x2693, 0x26A1, 0x26A1, 0x26AA, 0x26AB, 0x26BD, 0x26BE, 0x26C4, 0x26C5, 0x26CE, 0x26CE,
    0x26D4, 0x26D4, 0x26EA, 0x26EA, 0x26F2, 0x26F3, 0x26F5, 0x26F5, 0x26FA, 0x26FA, 0x26FD, 0x26FD,
    0x2705, 0x2705, 0x270A, 0x270B, 0x2728, 0x2728, 0x274C, 0x274C, 0x274E, 0x274E, 0x2753, 0x2755,
    0x2757, 0x2757, 0x2795, 0x2797, 0x27B0, 0x27B0, 0x27BF, 0x27BF, 0x2B1B, 0x2B1C, 0x2B50, 0x2B50,
    0x2B55, 0x2B55, 0x2E80, 0x3029, 0x3030, 0x303E, 0x3041, 0x3247, 0x3250, 0xA4C6, 0xA960, 0xA97C,
    0xAC00, 0xD7A3, 0xF900, 0xFAFF, 0xFE10, 0xFE6B, 0xFF01, 0xFF60, 0xFFE0, 0xFFE6, 0x16FE0,
    0x16FE3, 0x16FF2, 0x1B2FB, 0x1D300, 0x1D376, 0x1F004, 0x1F004, 0x1F0CF, 0x1F0CF, 0x1F18E,
    0x1F18E, 0x1F191, 0x1F19A, 0x1F200, 0x1F320, 0x1F32D, 0x1F335, 0x1F337, 0x1F37C, 0x1F37E,
    0x1F393, 0x1F3A0, 0x1F3CA, 0x1F3CF, 0x1F3D3, 0x1F3E0, 0x1F3F0, 0x1F3F4, 0x1F3F4, 0x1F3F8,
    0x1F43E, 0x1F440, 0x1F440, 0x1F442, 0x1F4FC, 0x1F4FF, 0x1F53D, 0x1F54B, 0x1F54E, 0x1F550,
    0x1F567, 0x1F57A, 0x1F57A, 0x1F595, 0x1F596, 0x1F5A4, 0x1F5A4, 0x1F5FB, 0x1F64F, 0x1F680,
    0x1F6C5, 0x1F6CC, 0x1F6CC, 0x1F6D0, 0x1F6D2, 0x1F6D5, 0x1F6DF, 0x1F6EB, 0x1F6EC, 0x1F6F4,
    0x1F6FC, 0x1F7E0, 0x1F7F0, 0x1F90C, 0x1F93A, 0x1F93C, 0x1F945, 0x1F947, 0x1F9FF, 0x1FA70,
    0x1FAF8, 0x20000, 0x3FFFD,
  };

  private Printable() {}

  /** The text on one line, with every character that is no ink or blank shown by its number. */
  public static String of(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (mayHide(text.charAt(i))) {
        return escaped(text);
      }
    }
    return text;
  }

  /**
   * Cells a terminal gives to printable text: two to wide characters and emoji, none to combining
   * marks, one to others (Unicode Standard Annex 11).
   */
  public static int width(String text) {
    int cells = 0;
    int last = ' ';
    for (int i = 0; i < text.length(); ) {
      int code = text.codePointAt(i);
      int next = width(code, last);
      cells += next;
      last = next > 0 ? code : last;
      i += Character.charCount(code);
    }
    return cells;
  }

  /** One character as it may be shown. */
  public static String of(int code) {
    return isHidden(code) ? number(code) : Character.toString(code);
  }

  /**
   * Cells one character adds.
   *
   * @param before the last character before it that takes a cell
   */
  static int width(int code, int before) {
    if (code < 0x300) {
      return 1;
    }
    if (code == EMOJI_SIGN) {
      // the sign before it is then shown as an emoji, which is wide
      return canBeEmoji(before) && !isWide(before) ? 1 : 0;
    }
    return isMark(code) || isSkinTone(code, before) ? 0 : isWide(code) ? 2 : 1;
  }

  private static boolean canBeEmoji(int code) {
    boolean key = (code >= '0' && code <= '9') || code == '#' || code == '*';
    return key || (code >= 0xA9 && code != EMOJI_SIGN);
  }

  private static boolean isMark(int code) {
    int type = Character.getType(code);
    boolean hangulVowel = code >= 0x1160 && code <= 0x11FF;
    return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || hangulVowel;
  }

  /** Whether the character only colours the emoji before it. */
  private static boolean isSkinTone(int code, int before) {
    return code >= 0x1F3FB && code <= 0x1F3FF && isWide(before);
  }

  private static boolean isWide(int code) {
    int found = Arrays.binarySearch(WIDE, code);
    // an odd insertion point lies between a first and its last
    return found >= 0 || (-found - 1) % 2 == 1;
  }

  private static String escaped(String text) {
    StringBuilder out = new StringBuilder(text.length() + 16);
    text.codePoints().forEach(code -> out.append(of(code)));
    return out.toString();
  }

  /** Cheap first look: only ASCII ink and blanks are surely safe. */
  private static boolean mayHide(char c) {
    return c < ' ' || c > '~';
  }

  /** Whether a character shows nothing itself, or changes how others are shown. */
  public static boolean isHidden(int code) {
    return switch (Character.getType(code)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      case Character.SPACE_SEPARATOR -> code != ' ';
      default -> false;
    };
  }

  private static String number(int code) {
    String hex = Integer.toHexString(code).toUpperCase(java.util.Locale.ROOT);
    return code > 0xFFFF ? "\\u{" + hex + "}" : "\\u" + "0".repeat(4 - hex.length()) + hex;
  }
}
