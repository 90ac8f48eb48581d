package deadband.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.math.BigDecimal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DocumentTest {

  private static final Document MILL =
      Documents.read(
          """
          // Mühle
          { "site": { "reference": "Mühle 🔥", "country": null },
            "outlets": [ { "at": "bath" }, { "at": "kitchen", "blended": false } ],
            "relay": { "start_kW": 3.20 } }
          """);

  /** RFC 6901, section 5: the document and the values its pointers evaluate to. */
  @Tag("outside")
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      ignoreLeadingAndTrailingWhitespace = false,
      value = {
        "/foo,`[\"bar\", \"baz\"]`",
        "/foo/0,\"bar\"",
        "/,0",
        "/a~1b,1",
        "/c%d,2",
        "/e^f,3",
        "/g|h,4",
        "/i\\j,5",
        "/k\"l,6",
        "/ ,7",
        "/m~0n,8"
      })
  void evaluatesThePointersOfTheStandard(String pointer, String json) {
    Document standard =
        Documents.read(
            """
            { "foo": ["bar", "baz"], "": 0, "a/b": 1, "c%d": 2, "e^f": 3, "g|h": 4,
              "i\\\\j": 5, "k\\"l": 6, " ": 7, "m~n": 8 }
            """);
    Node found = standard.find(Pointer.parse(pointer)).orElseThrow();
    assertThat(Literal.of(found).json()).isEqualTo(json);
    assertThat(standard.find(Pointer.parse(""))).contains(standard.root());
  }

  /**
   * RFC 6901, section 4: an index has no leading zero, "-" is the item after the last and so never
   * there; the order of a name's characters is not changed.
   */
  @Tag("outside")
  @ParameterizedTest
  @ValueSource(
      strings = {
        "/outlets/-",
        "/outlets/2",
        "/outlets/00",
        "/outlets/01",
        "/outlets/at",
        "/outlets/-1",
        "/outlets/99999999999999999999",
        "/relay/start_kw",
        "/relay/start_kW/x",
        "/none"
      })
  void findsNothingWhereNothingStands(String pointer) {
    assertThat(MILL.find(Pointer.parse(pointer))).isEmpty();
    assertThat(MILL.place(Pointer.parse(pointer))).isEmpty();
    assertThat(MILL.member(Pointer.parse(pointer))).isEmpty();
  }

  @Test
  void findsAValueAndItsPlace() {
    Pointer blended = Pointer.parse("/outlets/1/blended");
    assertThat(MILL.find(blended)).get().isInstanceOf(Node.Truth.class);
    assertThat(MILL.place(blended))
        .hasValueSatisfying(
            place -> {
              assertThat(place.line()).isEqualTo(3);
              assertThat(place.column()).isEqualTo(64);
            });
  }

  @Test
  void findsPlacesAfterAccentsAndEmoji() {
    Place place = MILL.place(Pointer.parse("/site/country")).orElseThrow();
    assertThat(place).hasToString("line 2, column 48");
    assertThat(MILL.find(Pointer.parse("/site/country"))).get().isInstanceOf(Node.Nothing.class);
  }

  @Test
  void findsTheNameOfAValue() {
    Member start = MILL.member(Pointer.parse("/relay/start_kW")).orElseThrow();
    assertThat(MILL.source().slice(start.nameSpan())).isEqualTo("\"start_kW\"");
    assertThat(MILL.source().slice(start.span())).isEqualTo("\"start_kW\": 3.20");
    assertThat(MILL.member(Pointer.parse("/outlets/0"))).isEmpty();
    assertThat(MILL.member(Pointer.root())).isEmpty();
  }

  @Test
  void keepsTheDigitsOfANumber() {
    Node.Numeral start = (Node.Numeral) MILL.find(Pointer.parse("/relay/start_kW")).orElseThrow();
    assertThat(start.literal()).isEqualTo("3.20");
    assertThat(start.value()).isEqualTo(3.2);
    assertThat(start.decimal()).isEqualTo(new BigDecimal("3.20"));
  }

  @Test
  void saysHowFarAPointerLeads() {
    assertThat(MILL.nearest(Pointer.parse("/relay/stop_kW"))).hasToString("/relay");
    assertThat(MILL.nearest(Pointer.parse("/relay/start_kW"))).hasToString("/relay/start_kW");
    assertThat(MILL.nearest(Pointer.parse("/tank/coil"))).isEqualTo(Pointer.root());
    assertThat(MILL.nearest(Pointer.parse("/outlets/7/at"))).hasToString("/outlets");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{ \"a\": 1, \"b\": [2] } | {\"b\":[2.0],\"a\":1e0} | true",
        "{ \"a\": 1 } | { \"a\": 2 } | false",
        "{ \"a\": 1 } | { \"b\": 1 } | false",
        "{ \"a\": 1 } | { \"a\": 1, \"b\": 1 } | false",
        "{ \"a\": null } | { } | false",
        "{ \"a\": null } | { \"a\": false } | false",
        "{ \"a\": \"1\" } | { \"a\": 1 } | false",
        "{ \"a\": \"\\u0041\" } | { \"a\": \"A\" } | true",
        "{ \"a\": [1, 2] } | { \"a\": [2, 1] } | false",
        "{ \"a\": [1] } | { \"a\": [1, 1] } | false",
        "{ \"a\": true } | { \"a\": true } | true",
        "{ \"a\": true } | { \"a\": false } | false",
        "{ \"a\": 0 } | { \"a\": -0.0 } | true",
        "{ \"a\": 0.1 } | { \"a\": 0.10000000000000000001 } | false"
      })
  void comparesWhatIsMeant(String one, String other, boolean same) {
    assertThat(Documents.read(one).same(Documents.read(other))).isEqualTo(same);
    assertThat(Documents.read(other).same(Documents.read(one))).isEqualTo(same);
  }

  @Test
  void hasNoDecimalForWhatIsNotFinite() {
    Node.Numeral infinite = new Node.Numeral(Span.at(0), "1e999", Double.POSITIVE_INFINITY);
    assertThatExceptionOfType(ArithmeticException.class)
        .isThrownBy(infinite::decimal)
        .withMessageContaining("1e999");
    assertThat(infinite.same(infinite)).isTrue();
    assertThat(infinite.same(new Node.Numeral(Span.at(0), "1", 1))).isFalse();
    assertThat(new Node.Numeral(Span.at(0), "1e-99999999999", 0).decimal()).isZero();
  }

  @Test
  void namesKindsForPeople() {
    Document all =
        Documents.read("{ \"s\": {}, \"l\": [], \"t\": \"\", \"n\": 1, \"b\": true, \"o\": null }");
    assertThat(all.root().members().stream().map(member -> member.value().kind()))
        .containsExactly("a section", "a list", "a text", "a number", "true or false", "null");
  }

  @Test
  void knowsItsNameAndItsPlaces() {
    assertThat(MILL.name()).isEqualTo("test.json");
    assertThat(MILL.source()).hasToString("test.json");
    assertThat(MILL.place(MILL.root().span().start())).hasToString("line 2, column 1");
    assertThat(MILL.root().has("relay")).isTrue();
    assertThat(MILL.root().has("tank")).isFalse();
    assertThat(Documents.read("{ \"a\": null }").same(Documents.read("{ \"a\": null }"))).isTrue();
  }

  @Test
  void isBuiltOnASourceThatIsEqualByNameAndText() {
    assertThat(Source.of("a", "{}"))
        .isEqualTo(Source.of("a", "{}"))
        .hasSameHashCodeAs(Source.of("a", "{}"));
    assertThat(Source.of("a", "{}")).isNotEqualTo(Source.of("b", "{}"));
    assertThat(Source.of("a", "{}")).isNotEqualTo(Source.of("a", "{ }"));
    assertThat(Source.of("a", "{}")).isNotEqualTo("a");
  }
}
