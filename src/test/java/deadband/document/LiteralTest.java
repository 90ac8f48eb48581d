package deadband.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LiteralTest {

  @ParameterizedTest
  @CsvSource({
    "0.1, 0.1",
    "62, 62",
    "62.0, 62",
    "-3.5, -3.5",
    "0, 0",
    "-0.0, 0",
    "1500, 1500",
    "0.000001, 0.000001",
    "1e300, 1E+300",
    "1e-300, 1E-300",
    "1e18, 1000000000000000000"
  })
  void writesNumbersShort(double value, String json) {
    assertThat(Literal.of(value).json()).isEqualTo(json);
    assertThat(Double.parseDouble(Literal.of(value).json())).isEqualTo(value + 0.0);
  }

  @Test
  void keepsTheDecimalsOfADecimal() {
    assertThat(Literal.of(new BigDecimal("3.00")).json()).isEqualTo("3.00");
    assertThat(Literal.of(3L).json()).isEqualTo("3");
    assertThat(Literal.of(new BigDecimal("1e999999999")).json()).isEqualTo("1E+999999999");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void refusesWhatJsonHasNot(double value) {
    assertThatIllegalArgumentException().isThrownBy(() -> Literal.of(value));
  }

  /** RFC 8259, section 7: quotation mark, backslash and U+0000 to U+001F must be escaped. */
  @Tag("outside")
  @Test
  void escapesWhatTheStandardAsks() {
    assertThat(Literal.of("a\"b\\c/d").json()).isEqualTo("\"a\\\"b\\\\c/d\"");
    assertThat(Literal.of("\n\r\t\b\u0000\u001f").json())
        .isEqualTo("\"\\n\\r\\t\\u0008\\u0000\\u001f\"");
    assertThat(Literal.of("é🔥").json()).isEqualTo("\"é🔥\"");
  }

  /** RFC 8259, section 8.1: exchanged text is UTF-8, which has no lone surrogates. */
  @Tag("outside")
  @Test
  void escapesHalfCharacters() {
    assertThat(Literal.of("a\ud83d").json()).isEqualTo("\"a\\ud83d\"");
    assertThat(Literal.of("\udd25b").json()).isEqualTo("\"\\udd25b\"");
  }

  @Test
  void writesListsAndSections() {
    Map<String, Literal> members = new LinkedHashMap<>();
    members.put("b", Literal.of(true));
    members.put("a", Literal.nothing());
    assertThat(Literal.section(members).json()).isEqualTo("{ \"b\": true, \"a\": null }");
    assertThat(Literal.list(List.of(Literal.of("x"), Literal.of(2L))).json())
        .isEqualTo("[\"x\", 2]");
    assertThat(Literal.section(Map.of()).json()).isEqualTo("{}");
    assertThat(Literal.list(List.of()).json()).isEqualTo("[]");
  }

  @Test
  void copiesAValueOnOneLine() {
    Document document =
        Documents.read(
            """
            { "a": [ 1.50, // three
              "x", true, null, { "b": {} } ] }
            """);
    assertThat(Literal.of(document.root()).json())
        .isEqualTo("{ \"a\": [1.50, \"x\", true, null, { \"b\": {} }] }");
  }

  @Test
  void isEqualByWhatItWrites() {
    assertThat(Literal.of(2.0)).isEqualTo(Literal.of(2L)).hasSameHashCodeAs(Literal.of(2L));
    assertThat(Literal.of("2")).isNotEqualTo(Literal.of(2L)).hasToString("\"2\"");
  }
}
