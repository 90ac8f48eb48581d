package deadband.reading;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Span;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class SyntaxErrorTest {

  private static Problem first(String text) {
    List<Problem> problems = JsonReading.ofText("x.json", text).problems();
    assertThat(problems).as(text).isNotEmpty();
    return problems.get(0);
  }

  private static Problem of(Kind kind, String text) {
    List<Problem> problems = JsonReading.ofText("x.json", text).problems();
    assertThat(problems).as(text).extracting(Problem::kind).contains(kind);
    return problems.stream().filter(p -> p.kind() == kind).findFirst().orElseThrow();
  }

  /**
   * A text, with what is wrong between guillemots; its kind; where it belongs; what is found, which
   * is what stands between the guillemots where nothing is given; what would be right.
   */
  private static Arguments row(String text, Kind kind, String pointer, String found, String right) {
    return Arguments.of(text, kind, pointer, found, right);
  }

  private static Arguments row(String text, Kind kind, String pointer, String right) {
    String found = text.substring(text.indexOf('⟦') + 1, text.indexOf('⟧'));
    return Arguments.of(text, kind, pointer, found, right);
  }

  static Stream<Arguments> errors() {
    List<Arguments> rows = new ArrayList<>(structure());
    rows.addAll(numbers());
    rows.addAll(words());
    rows.addAll(quotes());
    rows.addAll(blanks());
    return rows.stream();
  }

  private static List<Arguments> structure() {
    String value = "a value, or null where it is not known";
    String section = "one section: { … }";
    return List.of(
        row("{ \"a\": 1⟦⟧\n  \"b\": 2 }", Kind.COMMA_MISSING, "", "\"b\"", ", before it"),
        row("{ \"a\": 1⟦⟧ // c\n  \"b\": 2 }", Kind.COMMA_MISSING, "", "\"b\"", ", before it"),
        row("{ \"r\": {}⟦⟧ \"b\": 2 }", Kind.COMMA_MISSING, "", "\"b\"", ", before it"),
        row("{ \"a\": [1⟦⟧ 2] }", Kind.COMMA_MISSING, "/a", "2", ", before it"),
        row("{ \"a\": [\"x\"⟦⟧\"y\"] }", Kind.COMMA_MISSING, "/a", "\"y\"", ", before it"),
        row("{ \"a\": 1⟦⟧ b: 2 }", Kind.COMMA_MISSING, "", "b", ", before it"),
        row("{ \"a\": true ⟦false⟧ }", Kind.TEXT_AFTER_VALUE, "/a", ", or }"),
        row("{ \"a\": 1,⟦,⟧ \"b\": 2 }", Kind.COMMA_TOO_MANY, "", "one comma between two values"),
        row("{ ⟦,⟧ }", Kind.COMMA_TOO_MANY, "", "one comma between two values"),
        row("{ \"a\": [1, ⟦,⟧] }", Kind.COMMA_TOO_MANY, "/a", "one comma between two items"),
        row("{ \"a\": 1⟦;⟧ \"b\": 2 }", Kind.SEMICOLON, "/a", ","),
        row("{ \"a\"⟦⟧ 1 }", Kind.COLON_MISSING, "/a", "1", ": before it"),
        row("{ \"r\": { \"a\" ⟦=⟧ 1 } }", Kind.EQUALS_SIGN, "/r/a", ":"),
        row("{ \"a\" ⟦=⟧> 1 }", Kind.EQUALS_SIGN, "/a", ":"),
        row("{ \"a\":⟦=⟧ 1 }", Kind.EQUALS_SIGN, "/a", "one colon"),
        row("{ \"r\": { ⟦\"a\"⟧: , } }", Kind.VALUE_MISSING, "/r/a", value),
        row("{ ⟦\"a\"⟧: }", Kind.VALUE_MISSING, "/a", value),
        row("{ ⟦\"a\"⟧; \"b\": 1 }", Kind.VALUE_MISSING, "/a", value),
        row("{ ⟦\"a\"⟧, \"b\": 1 }", Kind.VALUE_MISSING, "/a", value),
        row("{ ⟦:⟧ 1 }", Kind.NAME_MISSING, "", "a name in double quotes and a colon before it"),
        row("{ ⟦{⟧ } }", Kind.NAME_MISSING, "", "a name in double quotes and a colon before it"),
        row("{ \"a\":⟦:⟧ 1 }", Kind.COLON_TOO_MANY, "/a", "one colon"),
        row("{ \"a\": ⟦...⟧ }", Kind.NOT_JSON, "/a", value),
        row("{ \"a\": 1 ⟦:⟧ 2 }", Kind.TEXT_AFTER_VALUE, "/a", ", or }"),
        row("{ ⟦.⟧.. }", Kind.NOT_JSON, "", "a name in double quotes, or }"),
        row("⟦start 3.2 kW⟧ \n", Kind.NOT_JSON, "", section),
        row("⟦[ { } ]⟧", Kind.NOT_A_SECTION, "", section),
        row("⟦\"relay\": {⟧\n}", Kind.NOT_A_SECTION, "", section),
        row("⟦3.2⟧", Kind.NOT_A_SECTION, "", section),
        row("⟦null⟧", Kind.NOT_A_SECTION, "", section),
        row("// c\n⟦}⟧", Kind.BRACKET_TOO_MANY, "", section),
        row("{ } ⟦}⟧", Kind.BRACKET_TOO_MANY, "", "nothing: every bracket is closed already"),
        row(
            "{ } ⟦{ \"a\": 1 }⟧",
            Kind.TEXT_AFTER_END,
            "",
            "nothing but comments after the closing }"),
        row("{ }⟦,⟧", Kind.TEXT_AFTER_END, "", "nothing but comments after the closing }"),
        row("{ \"a\": [1, 2 ⟦}⟧", Kind.BRACKET_MISMATCHED, "/a", "] before it"),
        row("{ \"r\": { \"a\": 1 ⟦]⟧ }", Kind.BRACKET_MISMATCHED, "/r", "}"),
        row("{ \"a\": [⟦}⟧ }", Kind.BRACKET_MISMATCHED, "/a", "]"),
        row("{ ⟦]⟧", Kind.BRACKET_MISMATCHED, "", "}"),
        row("{ \"a\": ⟦\"b\"⟧: 1 } }", Kind.BRACKET_NOT_OPENED, "/a", "{ before it"),
        row("{ \"a\": ⟦1⟧, \"b\" ] }", Kind.BRACKET_NOT_OPENED, "/a", "[ before it"),
        row(
            "{ \"a\": ⟦[⟧ \"b\": 1 ] }",
            Kind.BRACKETS_OF_OTHER_KIND,
            "/a",
            "{ … } around names and their values"),
        row(
            "{ \"a\": ⟦{⟧ \"b\", \"c\" } }",
            Kind.BRACKETS_OF_OTHER_KIND,
            "/a",
            "[ … ] around values without names"));
  }

  private static List<Arguments> numbers() {
    String form = "digits, with a point before decimals: 3.5";
    return List.of(
        row("{ \"a\": ⟦3,5⟧, \"b\": 1 }", Kind.DECIMAL_COMMA, "/a", "3.5"),
        row(
            "{ \"a\": ⟦1,500⟧, \"b\": 1 }",
            Kind.COMMA_AMBIGUOUS,
            "/a",
            "1.5 or 1500: write the one that is meant without a comma"),
        row("{ \"a\": ⟦60-62⟧ }", Kind.RANGE_WRITTEN, "/a", "one number: 60 or 62"),
        row("{ \"a\": ⟦-3,55⟧ }", Kind.DECIMAL_COMMA, "/a", "-3.55"),
        row("{ \"a\": ⟦0,3kW⟧ }", Kind.DECIMAL_COMMA, "/a", "0.3"),
        row("{ \"a\": ⟦1,234.5⟧ }", Kind.DIGITS_GROUPED, "/a", "1234.5"),
        row("{ \"a\": ⟦1.234,5⟧ }", Kind.DIGITS_GROUPED, "/a", "1234.5"),
        row("{ \"a\": ⟦1 000⟧ }", Kind.DIGITS_GROUPED, "/a", "1000"),
        row("{ \"a\": ⟦1\u202f000\u202f000⟧ }", Kind.DIGITS_GROUPED, "/a", "1000000"),
        row("{ \"a\": ⟦1_000⟧ }", Kind.DIGITS_GROUPED, "/a", "1000"),
        row("{ \"a\": ⟦1'000⟧ }", Kind.DIGITS_GROUPED, "/a", "1000"),
        row("{ \"a\": ⟦+3.5⟧ }", Kind.PLUS_SIGN, "/a", "3.5"),
        row("{ \"a\": ⟦−3.5⟧ }", Kind.LONG_MINUS, "/a", "-3.5"),
        row("{ \"a\": ⟦–3⟧ }", Kind.LONG_MINUS, "/a", "-3"),
        row("{ \"a\": ⟦03⟧ }", Kind.LEADING_ZERO, "/a", "3"),
        row("{ \"a\": ⟦-007.50⟧ }", Kind.LEADING_ZERO, "/a", "-7.50"),
        row("{ \"a\": ⟦00⟧ }", Kind.LEADING_ZERO, "/a", "0"),
        row("{ \"a\": ⟦.5⟧ }", Kind.POINT_WITHOUT_DIGIT, "/a", "0.5"),
        row("{ \"a\": ⟦-.5⟧ }", Kind.POINT_WITHOUT_DIGIT, "/a", "-0.5"),
        row("{ \"a\": ⟦5.⟧ }", Kind.POINT_WITHOUT_DIGIT, "/a", "5.0"),
        row("{ \"a\": ⟦3kW⟧ }", Kind.UNIT_WRITTEN, "/a", "3"),
        row("{ \"a\": ⟦1.8kWh/d⟧ }", Kind.UNIT_WRITTEN, "/a", "1.8"),
        row("{ \"a\": [⟦3 kW⟧] }", Kind.UNIT_WRITTEN, "/a/0", "3"),
        row("{ \"a\": ⟦60 °C⟧, \"b\": 1 }", Kind.UNIT_WRITTEN, "/a", "60"),
        row("{ \"a\": ⟦50%⟧ }", Kind.UNIT_WRITTEN, "/a", "50"),
        row("{ \"a\": ⟦5min⟧}", Kind.UNIT_WRITTEN, "/a", "5"),
        row("{ \"a\": ⟦1.2.3⟧ }", Kind.NUMBER_MALFORMED, "/a", form),
        row("{ \"a\": ⟦0x1F⟧ }", Kind.NUMBER_MALFORMED, "/a", form),
        row("{ \"a\": ⟦1e⟧ }", Kind.NUMBER_MALFORMED, "/a", form),
        row("{ \"a\": ⟦-⟧ }", Kind.NUMBER_MALFORMED, "/a", form),
        row("{ \"a\": ⟦2026-05-01⟧ }", Kind.TEXT_NOT_QUOTED, "/a", "\"2026-05-01\""),
        row("{ \"a\": ⟦12:30⟧ }", Kind.TEXT_NOT_QUOTED, "/a", "\"12:30\""));
  }

  private static List<Arguments> words() {
    String finite = "a finite number, or null where it is not known";
    return List.of(
        row("{ \"r\": { ⟦start_kW⟧: 3 } }", Kind.NAME_NOT_QUOTED, "/r/start_kW", "\"start_kW\""),
        row("{ \"r\": { ⟦start-kW⟧ : 3 } }", Kind.NAME_NOT_QUOTED, "/r/start-kW", "\"start-kW\""),
        row("{ ⟦3⟧: 3 }", Kind.NAME_NOT_QUOTED, "/3", "\"3\""),
        row("{ \"a\": ⟦netted⟧ }", Kind.TEXT_NOT_QUOTED, "/a", "\"netted\""),
        row("{ \"a\": ⟦normally open⟧, }", Kind.TEXT_NOT_QUOTED, "/a", "\"normally open\""),
        row("{ \"a\": ⟦L1⟧ // c\n }", Kind.TEXT_NOT_QUOTED, "/a", "\"L1\""),
        row("{ \"a\": [⟦élan⟧] }", Kind.TEXT_NOT_QUOTED, "/a/0", "\"élan\""),
        row("{ \"a\": ⟦True⟧ }", Kind.WORD_MISSPELT, "/a", "true"),
        row("{ \"a\": ⟦NULL⟧ }", Kind.WORD_MISSPELT, "/a", "null"),
        row("{ \"a\": ⟦yes⟧ }", Kind.OTHER_WORD, "/a", "true"),
        row("{ \"a\": ⟦Off⟧ }", Kind.OTHER_WORD, "/a", "false"),
        row("{ \"a\": ⟦n/a⟧ }", Kind.OTHER_WORD, "/a", "null"),
        row("{ \"a\": ⟦inf⟧ }", Kind.NOT_FINITE, "/a", finite));
  }

  private static List<Arguments> quotes() {
    return List.of(
        row("{ \"a\": ⟦'it'⟧ }", Kind.SINGLE_QUOTES, "/a", "\"it\""),
        row("{ ⟦'a'⟧: 1 }", Kind.SINGLE_QUOTES, "", "\"a\""),
        row("{ \"a\": ⟦'it⟧ }", Kind.SINGLE_QUOTES, "/a", "\"it\""),
        row("{ \"a\": ⟦“it”⟧ }", Kind.CURLY_QUOTES, "/a", "\"it\""),
        row("{ ⟦„a“⟧: 1 }", Kind.CURLY_QUOTES, "", "\"a\""),
        row("{ \"a\": ⟦‘it’⟧ }", Kind.CURLY_QUOTES, "/a", "\"it\""),
        row("{ \"a\": ⟦“it\"⟧ }", Kind.CURLY_QUOTES, "/a", "\"it\""),
        row(
            "{ \"a\": ⟦\"it⟧\n  is here\" }",
            Kind.TEXT_OVER_LINES,
            "/a",
            "the text on one line: it is here"),
        row("{ \"a\": ⟦\"it⟧\n }", Kind.QUOTE_NOT_CLOSED, "/a", "\"it\""),
        row("{ \"a\": ⟦\"it⟧", Kind.QUOTE_NOT_CLOSED, "/a", "\"it\""),
        row("{ \"a\": ⟦\"it⟧\\", Kind.QUOTE_NOT_CLOSED, "/a", "\"it\""),
        row("{ ⟦\"a⟧: 1, \"b\": 2 }", Kind.QUOTE_NOT_CLOSED, "", "\"a\""),
        row("{ \"a\": ⟦\"x⟧, \"b\": 2 }", Kind.QUOTE_NOT_CLOSED, "/a", "\"x\""),
        row(
            "{ \"a\": \"the ⟦\"⟧big\" tank\" }",
            Kind.QUOTE_INSIDE,
            "/a",
            "\"the \"big\" tank\"",
            "\"the \\\"big\\\" tank\""),
        row("{ \"a\": \"a⟦\t⟧b\" }", Kind.CONTROL_CHARACTER, "/a", "\\t"),
        row("{ \"a\": \"⟦\u001b⟧[31m\" }", Kind.CONTROL_CHARACTER, "/a", "\\u001b"),
        row("{ \"a\": \"C:⟦\\k⟧it\" }", Kind.ESCAPE_UNKNOWN, "/a", "\\\\k"),
        row("{ \"a\": \"⟦\\🔥⟧\" }", Kind.ESCAPE_UNKNOWN, "/a", "\\\\🔥"),
        row("{ \"a⟦\\ud83d⟧\": 1 }", Kind.HALF_CHARACTER, "", "the whole character"),
        row("{ \"\\ud83d\\udd25⟦\\udd25⟧\": 1 }", Kind.HALF_CHARACTER, "", "the whole character"),
        row(
            "{ \"a\": \"⟦\\u12G4⟧\" }",
            Kind.ESCAPE_UNKNOWN,
            "/a",
            "\\u and four digits 0 to 9, A to F"));
  }

  private static List<Arguments> blanks() {
    return List.of(
        row(
            "{ \"a\":⟦\u00a0⟧1 }",
            Kind.STRANGE_BLANK,
            "",
            "U+00A0 NO-BREAK SPACE",
            "an ordinary space"),
        row("{ ⟦\u200b⟧ }", Kind.STRANGE_BLANK, "", "U+200B ZERO WIDTH SPACE", "an ordinary space"),
        row("{ ⟦# c⟧ \n }", Kind.COMMENT_BY_HASH, "", "// before a comment"),
        row("{ ⟦/*⟧ c }", Kind.COMMENT_NOT_CLOSED, "", "*/ at the end of the comment"),
        row("⟦/*⟧/ { }", Kind.COMMENT_NOT_CLOSED, "", "*/ at the end of the comment"));
  }

  @ParameterizedTest
  @MethodSource("errors")
  void saysWhatIsWrongAndWhatWouldBeRight(
      String marked, Kind kind, String pointer, String found, String right) {
    int start = marked.indexOf('⟦');
    String text = marked.replace("⟦", "").replace("⟧", "");
    Problem problem = of(kind, text);
    assertThat(problem.span()).isEqualTo(new Span(start, marked.indexOf('⟧') - 1));
    assertThat(problem.pointer() == null ? "" : problem.pointer().toString()).isEqualTo(pointer);
    assertThat(problem.found()).isEqualTo(found);
    assertThat(problem.right()).isEqualTo(right);
  }

  @Test
  void namesWhereTheBracketWasOpened() {
    Problem mismatched = first("{ \"a\":\n  [1, 2 }");
    assertThat(mismatched.earlierPlace()).get().hasToString("line 2, column 3");
    Problem open = first("{ \"relay\": {\n  \"start_kW\": 3,\n");
    assertThat(open.kind()).isEqualTo(Kind.BRACKET_NOT_CLOSED);
    assertThat(open.place()).get().hasToString("line 1, column 12");
    assertThat(open.pointer()).hasToString("/relay");
    assertThat(open.found()).isEqualTo("the end of the file at line 3, column 1");
    assertThat(open.right()).isEqualTo("}} before it");
    assertThat(first("{ \"a\": [ { }, ").right()).isEqualTo("]} before it");
  }

  @Test
  void findsTheUnclosedBracketByItsIndentation() {
    Problem open =
        first(
            """
            {
              "site": { "reference": "Mill" },
              "relay": {
                "counts": [
                  "export"
                ],
                "start_kW": 3.0,
              "heatPump": {
                "everyday": {
                  "start_C": 51
                }
              }
            }
            """);
    assertThat(open.kind()).isEqualTo(Kind.BRACKET_NOT_CLOSED);
    assertThat(open.place()).get().hasToString("line 3, column 12");
    assertThat(open.pointer()).hasToString("/relay");
  }

  @Test
  void saysWhereTheFileWasClosedTooEarly() {
    Problem after = first("{ \"a\": 1 }\n, \"b\": 2 }");
    assertThat(after.kind()).isEqualTo(Kind.TEXT_AFTER_END);
    assertThat(after.earlierPlace()).get().hasToString("line 1, column 10");
  }

  @Test
  void tellsEmptyFromNearlyEmpty() {
    assertThat(first("").found()).isEqualTo("no text");
    assertThat(first(" \n\t").found()).isEqualTo("no text");
    assertThat(first("\ufeff").found()).isEqualTo("no text");
    assertThat(first("// nothing yet\n").found()).isEqualTo("only blanks and comments");
    assertThat(first("").kind()).isEqualTo(Kind.EMPTY);
    assertThat(first("").place()).isEmpty();
  }

  @Test
  void hasATestForEveryKindOfMistake() {
    Set<Kind> tested = EnumSet.noneOf(Kind.class);
    errors().forEach(row -> tested.add((Kind) row.get()[1]));
    tested.add(Kind.BRACKET_NOT_CLOSED);
    // TOO_DEEP is told by the reader, not by this walk
    EnumSet<Kind> syntax = EnumSet.range(Kind.NOT_JSON, Kind.TEXT_AFTER_END);
    syntax.remove(Kind.TOO_DEEP);
    assertThat(tested).containsAll(syntax);
  }

  @Test
  void walksLongLinesInLittleTime() {
    String brackets = "[],".repeat(1_000_000);
    String text = "{ \"a\": [" + " ".repeat(1_000_000) + brackets + "; ] }";
    long before = System.nanoTime();
    assertThat(first(text).kind()).isEqualTo(Kind.SEMICOLON);
    assertThat(System.nanoTime() - before).isLessThan(20_000_000_000L);
  }
}
