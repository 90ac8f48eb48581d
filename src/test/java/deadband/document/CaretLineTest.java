package deadband.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CaretLineTest {

  private static CaretLine of(String text, String value, int room) {
    int start = text.indexOf(value);
    return CaretLine.of(Source.of("x", text), new Span(start, start + value.length()), room);
  }

  /** Text, value and room, and the line that is shown with its caret; → stands for a tab. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      ignoreLeadingAndTrailingWhitespace = false,
      value = {
        // fits
        "a: 15, b|15|10|a: 15, b|   ^^",
        "a: 15, bcd|15|10|a: 15, bcd|   ^^",
        "   a: 15|15|5|a: 15|   ^^",
        // cut after, before, on both sides
        "a: 15, bcde|15|10|a: 15, bc…|   ^^",
        "abcdefg: 15|15|10|…g: 15|    ^^",
        "abcdefg: 15, hijk|15|10|…g: 15, h…|    ^^",
        "abcdefg: 15, hij|15|10|…g: 15, h…|    ^^",
        "abcdefg: 15, hi|15|10|…g: 15, hi|    ^^",
        "a: 15151515151515|15151515151515|10|a: 151515…|   ^^^^^^",
        // wide, combining and escaped characters
        "日本: 15, b|15|12|日本: 15, b|      ^^",
        "日本日本: 15|15|10|…: 15|   ^^",
        "a: 日本, bcd|日本|10|a: 日本, …|   ^^^^",
        "a: 🔥, bcdef|🔥|10|a: 🔥, bc…|   ^^",
        "abcde: 15, 🔥|15|10|…e: 15, 🔥|    ^^",
        "abcde: 15, h🔥|15|10|…e: 15, h…|    ^^",
        // tabs
        "a→b→15|15|12|a   b   15|        ^^",
        "abcd→15|15|12|abcd    15|        ^^",
        "→→a→15|15|12|a   15|    ^^"
      })
  void showsTheValue(String text, String value, int room, String line, String caret) {
    CaretLine shown = of(text.replace('→', '\t'), value, room);
    assertThat(shown.text("")).isEqualTo(line + "\n" + caret + "\n");
  }

  @Test
  void countsCombiningMarksAsNothing() {
    CaretLine shown = of("e\u0301e\u0301: 15", "15", 10);
    assertThat(shown).isEqualTo(new CaretLine("e\u0301e\u0301: 15", 4, 2));
    assertThat(of("abcdee\u0301: 15", "15", 9).line()).isEqualTo("…e\u0301: 15");
    assertThat(of("abcde\u0301e: 15", "15", 9).line()).isEqualTo("…e: 15");
  }

  @Test
  void splitsNoCharacterOfTwoHalves() {
    // the first and last characters looked at lie in the middle of a flame
    assertThat(of("🔥".repeat(9) + "a15" + "🔥".repeat(9), "15", 10))
        .isEqualTo(new CaretLine("…🔥a15🔥…", 4, 2));
    assertThat(of("🔥".repeat(9) + "15b" + "🔥".repeat(9), "15", 10).line()).doesNotContain("\\u");
    CaretLine shown = CaretLine.of(Source.of("x", "{ 🔥\n}"), new Span(2, 6), 10);
    assertThat(shown).isEqualTo(new CaretLine("{ 🔥", 2, 2));
  }

  @Test
  void keepsTheLawsOnRandomLines() {
    Random random = new Random(11);
    String[] ink = {"a", "b", " ", "é", "e\u0301", "日", "🔥", "\u001b", "\ufe0f", "1"};
    for (int i = 0; i < 5_000; i++) {
      StringBuilder text = new StringBuilder("x");
      int start = 0;
      int length = random.nextInt(40);
      int at = random.nextInt(length + 1);
      for (int j = 0; j <= length; j++) {
        if (j == at) {
          start = text.length();
          text.append("#");
        }
        text.append(ink[random.nextInt(ink.length)]);
      }
      int room = 9 + random.nextInt(40);
      CaretLine shown =
          CaretLine.of(Source.of("x", text.toString()), new Span(start, start + 1), room);
      String whole = Printable.of(text.toString());
      assertThat(Printable.width(shown.line())).as(whole).isLessThanOrEqualTo(room);
      int mark = shown.line().indexOf('#');
      assertThat(Printable.width(shown.line().substring(0, mark)))
          .as(whole)
          .isEqualTo(shown.before());
      assertThat(shown.carets()).isEqualTo(1);
      assertThat(whole).contains(shown.line().replace("…", ""));
      boolean many = text.length() > 4 * room;
      assertThat(shown.line().contains("…") && !many)
          .as(whole)
          .isEqualTo(Printable.width(whole) > room && !many);
    }
  }
}
