package deadband.reading;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.document.Literal;
import deadband.document.Node;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Our own cases for the grammar of JSON, each by the section of RFC 8259 that decides it; the
 * grammar (ABNF) of sections 2 to 7 was read.
 */
@Tag("outside")
class GrammarTest {

  private static Node value(String json) {
    JsonReading reading = JsonReading.ofText("x.json", "{ \"v\": " + json + " }");
    assertThat(reading).as(json).isInstanceOf(JsonReading.Read.class);
    assertThat(reading.problems()).as(json).isEmpty();
    assertThat(JsonJudge.tokens("{ \"v\": " + json + " }")).as(json).isPresent();
    return ((JsonReading.Read) reading).document().root().get("v").orElseThrow();
  }

  private static void assertRefused(String text) {
    JsonReading reading = JsonReading.ofText("x.json", text);
    assertThat(reading.problems()).as(text).isNotEmpty();
    assertThat(JsonJudge.tokens(text)).as(text).isEmpty();
  }

  /** Section 6: [ minus ] int [ frac ] [ exp ]. */
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0, 0",
    "7, 7",
    "-12, -12",
    "0.5, 0.5",
    "10.250, 10.25",
    "1e3, 1000",
    "1E3, 1000",
    "1e+3, 1000",
    "25e-1, 2.5",
    "-1.5E-2, -0.015",
    "0e0, 0",
    "123456789012, 123456789012"
  })
  void readsNumbers(String literal, double meant) {
    Node.Numeral numeral = (Node.Numeral) value(literal);
    assertThat(numeral.literal()).isEqualTo(literal);
    assertThat(numeral.value() + 0.0).isEqualTo(meant);
    assertThat(numeral.decimal()).isEqualByComparingTo(java.math.BigDecimal.valueOf(meant));
  }

  /** Section 6: no leading zeros, no plus, digits on both sides of the point and after the e. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "00", "01", "-01", "+1", ".5", "-.5", "1.", "1.e3", "1e", "1e+", "1E-", "-", "--1", "0x1F",
        "1_000", "1.2.3", "1e1.5", "٣", "１", "1e5x", "- 1"
      })
  void refusesOtherNumbers(String literal) {
    assertRefused("{ \"v\": " + literal + " }");
  }

  /** Section 7: the escapes, and characters as they are. */
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      value = {
        "\"\" | ``",
        "\"a b\" | a b",
        "\"\\\"\" | \"",
        "\"\\\\\" | \\",
        "\"\\/\" | /",
        "\"/\" | /",
        "\"\\u0041\\u00e9\\u00E9\" | Aéé",
        "\"\\ud83d\\udd25\" | 🔥",
        "\"é🔥\" | é🔥",
        "\"// no comment /* none */\" | // no comment /* none */",
        "\"{[,:]}\" | {[,:]}"
      })
  void readsTexts(String json, String meant) {
    assertThat(((Node.Text) value(json)).value()).isEqualTo(meant);
  }

  /** Section 7: \b \f \n \r \t. */
  @org.junit.jupiter.api.Test
  void readsTheShortEscapes() {
    assertThat(((Node.Text) value("\"\\b\\f\\n\\r\\t\"")).value()).isEqualTo("\b\f\n\r\t");
    assertThat(((Node.Text) value("\"\u007f\u2028\"")).value()).isEqualTo("\u007f\u2028");
  }

  /** Section 7: no control characters, no other escapes, double quotes only. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"a\nb\"",
        "\"a\tb\"",
        "\"\u0000\"",
        "\"\u001f\"",
        "\"\\x\"",
        "\"\\'\"",
        "\"\\u12\"",
        "\"\\u12G4\"",
        "\"\\U0041\"",
        "\"\\u٠٠٤١\"",
        "'a'",
        "`a`",
        "“a”",
        "\"a",
        "a\"",
        "\"\\\""
      })
  void refusesOtherTexts(String json) {
    assertRefused("{ \"v\": " + json + " }");
  }

  /** Section 3: the literal names are in small letters, and there are no others. */
  @ParameterizedTest
  @ValueSource(strings = {"true", "false", "null"})
  void readsTheLiteralNames(String json) {
    assertThat(Literal.of(value(json)).json()).isEqualTo(json);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"True", "FALSE", "nil", "undefined", "truefalse", "tru", "nullx", "true1", "yes"})
  void refusesOtherWords(String json) {
    assertRefused("{ \"v\": " + json + " }");
  }

  /** Sections 4 and 5: objects and arrays; the trailing comma is ours. */
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      value = {
        "[] | []",
        "[ 1 , 2 ] | [1, 2]",
        "[[],{}] | [[], {}]",
        "[1,] | [1]",
        "{} | {}",
        "{\"a\":1,\"b\":[null]} | { \"a\": 1, \"b\": [null] }",
        "{\"a\":1,} | { \"a\": 1 }",
        "{\"\":0} | { \"\": 0 }"
      })
  void readsSectionsAndLists(String json, String compact) {
    assertThat(Literal.of(value(json)).json()).isEqualTo(compact);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[1 2]",
        "[,]",
        "[,1]",
        "[1,,2]",
        "[1,,]",
        "[1",
        "1]",
        "[1}",
        "{,}",
        "{\"a\"}",
        "{\"a\":}",
        "{\"a\":1",
        "{\"a\":1]",
        "{\"a\":1,,}",
        "{\"a\" 1}",
        "{\"a\"::1}",
        "{\"a\"=1}",
        "{a:1}",
        "{1:1}",
        "{null:1}",
        "{[]:1}",
        "{\"a\":1 \"b\":2}",
        "{\"a\":1;\"b\":2}",
        "{:1}",
        "[:]",
        ""
      })
  void refusesOtherSectionsAndLists(String json) {
    assertRefused("{ \"v\": " + json + " }");
  }

  /** Section 2: blanks are space, tab, line feed and carriage return; comments are ours. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        " 1",
        "\t1",
        "\n1",
        "\r1",
        "\r\n1",
        "/* c */1",
        "// c\n1",
        "// c\r1",
        "/**/ 1",
        "/***/1"
      })
  void readsBlanksAndComments(String json) {
    assertThat(((Node.Numeral) value(json)).value()).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\u00a01",
        "\u000b1",
        "\f1",
        "\u00851",
        "\u20281",
        "\u30001",
        "\ufeff1",
        "\u200b1",
        "\u00001",
        "# c\n1",
        "/ 1",
        "/*/1",
        "<!-- -->1",
        "-- c\n1"
      })
  void refusesOtherBlanks(String json) {
    assertRefused("{ \"v\":" + json + " }");
  }

  /** Section 2: one value, with nothing after it; ours asks that it be an object. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "{} {}",
        "{}{}",
        "{},",
        "{} x",
        "{}}",
        "{}]",
        "{} 1",
        "{} \"a\"",
        "{} /*",
        "[]",
        "1",
        "\"a\"",
        "null",
        "",
        " ",
        "// c",
        "/* c",
        "}",
        "]",
        ",",
        ":",
        "\u0000",
        "{",
        "{\"a\":1",
        "{\"a\"",
        "{\"a"
      })
  void refusesOtherFiles(String text) {
    assertRefused(text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"{}", " {} ", "{}\n// c", "/* c */{}/* c */", "\ufeff{}", "{/* */}", "{ // c\n}"})
  void readsFiles(String text) {
    JsonReading reading = JsonReading.ofText("x.json", text);
    assertThat(reading).isInstanceOf(JsonReading.Read.class);
    assertThat(reading.problems()).isEmpty();
  }
}
