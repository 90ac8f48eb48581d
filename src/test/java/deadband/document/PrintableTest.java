package deadband.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintableTest {

  @Test
  void leavesOrdinaryTextAlone() {
    String text = "Müllers Heizung, 60 °C, 日本 🔥 e\u0301";
    assertThat(Printable.of(text)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "'\u001b[2J', \\u001B[2J", // clears the screen
    "'\u001b]0;x\u0007', \\u001B]0;x\\u0007", // sets the window's title
    "'\u009b31m', \\u009B31m", // the same in one byte
    "'a\u0000b', a\\u0000b",
    "'a\nb\r', a\\u000Ab\\u000D",
    "'a\tb', a\\u0009b",
    "'\u007f', \\u007F",
    "'\u202eabc', \\u202Eabc", // turns the direction of writing
    "'\u2066x\u2069', \\u2066x\\u2069",
    "'\u200bx', \\u200Bx", // takes no cell
    "'\ufeffx', \\uFEFFx",
    "'a\u00a0b', a\\u00A0b",
    "'\u2028', \\u2028",
    "'\udb40\udc41', \\u{E0041}" // a tag, invisible
  })
  void showsWhatCouldDriveTheTerminal(String text, String shown) {
    assertThat(Printable.of(text)).isEqualTo(shown);
  }

  @Test
  void showsHalfCharacters() {
    assertThat(Printable.of("a\ud83db")).isEqualTo("a\\uD83Db");
  }

  @Test
  void leavesNothingThatIsNotInkOrBlank() {
    for (int code = 0; code <= Character.MAX_CODE_POINT; code++) {
      String shown = Printable.of(Character.toString(code));
      boolean hidden =
          shown
              .codePoints()
              .anyMatch(c -> Character.getType(c) == Character.CONTROL || isDirection(c));
      if (hidden) {
        assertThat(shown).as("U+%X", code).isEqualTo("its number");
      }
    }
  }

  /** The characters that turn the direction of writing: Unicode Standard Annex 9 (from memory). */
  private static boolean isDirection(int code) {
    return (code >= 0x202A && code <= 0x202E)
        || (code >= 0x2066 && code <= 0x2069)
        || code == 0x200E
        || code == 0x200F
        || code == 0x061C;
  }

  /** Widths as the wcwidth library 0.7.0 for Python gives them (Unicode 17, read). */
  @Tag("outside")
  @ParameterizedTest
  @CsvSource({
    "abc, 3",
    "e\u0301, 1",
    "n\u0303o, 2",
    "日本, 4",
    "한국, 4",
    "\u1112\u1161\u11ab, 2",
    "🔥, 2",
    "\u2600, 1",
    "\u2600\ufe0f, 2",
    "\ud83d\udee0, 1",
    "\ud83d\udee0\ufe0f, 2",
    "\ud83d\udc4d\ud83c\udffd, 2",
    "1\ufe0f\u20e3, 2",
    "\ud83c\uddec\ud83c\udde7, 2",
    "\uff8a, 1",
    "\uff21, 2",
    "Ω, 1",
    "°C, 2",
    "−, 1",
    "½, 1",
    "a\u20dd, 1",
    "'', 0"
  })
  void countsCells(String text, int cells) {
    assertThat(Printable.width(text)).isEqualTo(cells);
  }
}
