package deadband.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EditTest {

  private static final String RELAY =
      """
      // Mill Cottage
      {
        "relay": {
          "start_kW": 3.0,   // as the maker left it
          /* too near */ "stop_kW": 2.7
        }
      }
      """;

  private static String set(String text, String pointer, Literal value) {
    return Documents.read(text).with(Pointer.parse(pointer), value);
  }

  private static String remove(String text, String pointer) {
    return Documents.read(text).without(Pointer.parse(pointer));
  }

  @Test
  void replacesAValueAndNothingElse() {
    assertThat(set(RELAY, "/relay/stop_kW", Literal.of(0.1)))
        .isEqualTo(RELAY.replace("2.7", "0.1"));
    assertThat(set(RELAY, "/relay/start_kW", Literal.nothing()))
        .isEqualTo(RELAY.replace("3.0", "null"));
  }

  @Test
  void replacesTheWholeFile() {
    assertThat(set(RELAY, "", Literal.section(java.util.Map.of())))
        .isEqualTo("// Mill Cottage\n{}\n");
  }

  /** One row: the file, where a value goes, and the file after it; ¶ stands for a line end. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        // in a line
        "{ \"a\": 1 } | /b | { \"a\": 1, \"b\": 7 }",
        "{\"a\":1,\"c\":2} | /b | {\"a\":1,\"c\":2,\"b\": 7}",
        "{ \"a\": 1, } | /b | { \"a\": 1, \"b\": 7, }",
        "{ \"a\": 1 /* one */ } | /b | { \"a\": 1, /* one */ \"b\": 7 }",
        "{ \"a\": 1, /* one */ } | /b | { \"a\": 1, /* one */ \"b\": 7, }",
        "{ \"a\": [1, 2] } | /a/2 | { \"a\": [1, 2, 7] }",
        "{ \"a\": [1,2] } | /a/- | { \"a\": [1,2,7] }",
        // in lines of their own
        "{¶  \"a\": 1¶} | /b | {¶  \"a\": 1,¶  \"b\": 7¶}",
        "{¶  \"a\": 1,¶} | /b | {¶  \"a\": 1,¶  \"b\": 7,¶}",
        "{¶\t\"a\": 1 // one¶} | /b | {¶\t\"a\": 1, // one¶\t\"b\": 7¶}",
        "{¶  \"a\": 1¶  // the rest is not known¶} | /b | {¶  \"a\": 1,¶  // the rest is not known¶  \"b\": 7¶}",
        "{ \"a\": 1, // one¶  \"c\": 2 } | /b | { \"a\": 1, // one¶  \"c\": 2,¶  \"b\": 7 }",
        "{ \"a\": 1 // one¶} | /b | { \"a\": 1, // one¶\"b\": 7¶}",
        // into what is empty
        "{ \"a\": {} } | /a/b | { \"a\": { \"b\": 7 } }",
        "{ \"a\": { } } | /a/b | { \"a\": { \"b\": 7 } }",
        "{ \"a\": { /* none */ } } | /a/b | { \"a\": { /* none */ \"b\": 7 } }",
        "{ \"a\": {/* none */} } | /a/b | { \"a\": {/* none */ \"b\": 7 } }",
        "{ \"a\": [] } | /a/0 | { \"a\": [7] }",
        "{¶  \"a\": {¶    // none¶  }¶} | /a/b | {¶  \"a\": {¶    // none¶    \"b\": 7¶  }¶}",
        "{¶\t\"a\": {¶\t}¶} | /a/b | {¶\t\"a\": {¶\t\t\"b\": 7¶\t}¶}",
        "{} | /b | {¶  \"b\": 7¶}",
        "{ } | /b | {¶  \"b\": 7¶ }",
        // with what is missing around it
        "{ \"a\": 1 } | /b/c/d | { \"a\": 1, \"b\": { \"c\": { \"d\": 7 } } }",
        "{ \"a\": null } | /a/b | { \"a\": { \"b\": 7 } }",
        "{ \"a\": null } | /a | { \"a\": 7 }",
        "{ \"a\": 1 } | /b/0/c | { \"a\": 1, \"b\": [{ \"c\": 7 }] }",
        "{ \"a\": 1 } | /b/- | { \"a\": 1, \"b\": [7] }",
        "{ \"a\": [] } | /a/0/b | { \"a\": [{ \"b\": 7 }] }",
        "{ \"a\": 1 } | /x~1y | { \"a\": 1, \"x/y\": 7 }"
      })
  void insertsInTheLayoutOfTheSiblings(String before, String pointer, String after) {
    String text = before.replace('¶', '\n');
    assertThat(set(text, pointer, Literal.of(7L))).isEqualTo(after.replace('¶', '\n'));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{ \"a\": 1, \"b\": 2 } | /a | { \"b\": 2 }",
        "{ \"a\": 1, \"b\": 2 } | /b | { \"a\": 1 }",
        "{ \"a\": 1, \"b\": 2, } | /b | { \"a\": 1, }",
        "{ \"a\": 1 } | /a | { }",
        "{ \"a\": [1, 2, 3] } | /a/1 | { \"a\": [1, 3] }",
        "{ \"a\": [1] } | /a/0 | { \"a\": [] }",
        "{¶  \"a\": 1,¶  \"b\": 2¶} | /a | {¶  \"b\": 2¶}",
        "{¶  \"a\": 1,¶  \"b\": 2¶} | /b | {¶  \"a\": 1¶}",
        "{¶  \"a\": 1,¶  \"b\": 2,¶} | /b | {¶  \"a\": 1,¶}",
        "{¶  \"a\": {¶    \"x\": 1¶  },¶  \"b\": 2¶} | /a | {¶  \"b\": 2¶}",
        "{¶  \"a\": 1, \"b\": 2,¶  \"c\": 3¶} | /b | {¶  \"a\": 1,¶  \"c\": 3¶}",
        "{¶  \"a\": 1, \"b\": 2¶} | /a | {¶  \"b\": 2¶}",
        // comments stay
        "{¶  \"a\": 1, // one¶  \"b\": 2¶} | /b | {¶  \"a\": 1 // one¶}",
        "{¶  // one¶  \"a\": 1, // ONE¶  \"b\": 2¶} | /a | {¶  // one¶  // ONE¶  \"b\": 2¶}",
        "{¶  \"a\": 1,¶  \"b\": 2 // two¶} | /b | {¶  \"a\": 1¶  // two¶}",
        "{ \"a\": 1 /* one */ , \"b\": 2 } | /a | { /* one */  \"b\": 2 }"
      })
  void removesAValueWithItsComma(String before, String pointer, String after) {
    String text = before.replace('¶', '\n');
    assertThat(remove(text, pointer)).isEqualTo(after.replace('¶', '\n'));
  }

  @Test
  void keepsTheLineEndsOfTheFile() {
    assertThat(set("{\r\n  \"a\": 1\r\n}\r\n", "/b", Literal.of(7L)))
        .isEqualTo("{\r\n  \"a\": 1,\r\n  \"b\": 7\r\n}\r\n");
    assertThat(remove("{\r\n  \"a\": 1,\r\n  \"b\": 7\r\n}\r\n", "/a"))
        .isEqualTo("{\r\n  \"b\": 7\r\n}\r\n");
  }

  @Test
  void keepsTheByteOrderMark() {
    assertThat(set("\uFEFF{\"a\": 1}", "/a", Literal.of(2L))).isEqualTo("\uFEFF{\"a\": 2}");
    assertThat(set("\uFEFF{}", "/a", Literal.of(2L))).isEqualTo("\uFEFF{\n  \"a\": 2\n}");
  }

  @ParameterizedTest
  @CsvSource({
    "/relay/start_kW/x, a number",
    "/list/5, only at its end",
    "/list/x, only at its end",
    "/new/3, begins with item 0"
  })
  void refusesToInsertWhereNothingCanStand(String pointer, String reason) {
    Document document = Documents.read("{ \"relay\": { \"start_kW\": 3 }, \"list\": [1] }");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> document.with(Pointer.parse(pointer), Literal.of(1L)))
        .withMessageContaining(reason);
  }

  @Test
  void refusesWhatDoesNotFit() {
    Document document = Documents.read(RELAY);
    Pointer none = Pointer.parse("/tank/volume_L");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> document.without(none))
        .withMessageContaining("tank.volume_L");
    assertThatIllegalArgumentException().isThrownBy(() -> document.without(Pointer.root()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> document.without(Pointer.parse("/relay/start_kW/x")));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> document.with(new Edit.Replace(none, Literal.of(1L))))
        .withMessageContaining("tank.volume_L");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> document.with(new Edit.Insert(Pointer.parse("/relay/stop_kW"), Literal.of(1L))))
        .withMessageContaining("replace it");
  }

  @Test
  void appliesSeveralOneAfterTheOther() {
    Document document = Documents.read(RELAY);
    List<Edit> edits =
        List.of(
            new Edit.Replace(Pointer.parse("/relay/stop_kW"), Literal.of(0.1)),
            new Edit.Insert(Pointer.parse("/tank/volume_L"), Literal.of(300L)),
            new Edit.Insert(Pointer.parse("/tank/height_mm"), Literal.of(1600L)),
            new Edit.Remove(Pointer.parse("/relay/start_kW")));
    assertThat(deadband.reading.JsonReading.edited(document, edits).text())
        .isEqualTo(
            """
            // Mill Cottage
            {
              "relay": {
                // as the maker left it
                /* too near */ "stop_kW": 0.1
              },
              "tank": { "volume_L": 300, "height_mm": 1600 }
            }
            """);
  }
}
