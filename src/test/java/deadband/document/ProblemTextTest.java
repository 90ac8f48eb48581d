package deadband.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProblemTextTest {

  private static Problem at(String text, String value) {
    Source source = Source.of("mill.json", text);
    int start = text.indexOf(value);
    return Problem.of(source, Problem.Kind.OUT_OF_RANGE, value, "0 to 1440 min")
        .at(Pointer.parse("/relay/startDelay_min"), new Span(start, start + value.length()));
  }

  /** Cells before the caret in a rendered problem must be the cells before the value above it. */
  private static void assertCaretUnder(String text, String value) {
    List<String> lines = ProblemText.of(at(text, value), 80).lines().toList();
    String shown = lines.get(2);
    String caret = lines.get(3);
    int cells = Printable.width(shown.substring(0, shown.indexOf(Printable.of(value))));
    assertThat(caret).as(shown).isEqualTo(" ".repeat(cells) + "^".repeat(Printable.width(value)));
  }

  @Test
  void saysWhereWhatAndWhatWouldBeRight() {
    Problem problem = at("{\n    \"startDelay_min\": 1500,\n}", "1500").near("startDelay_min");
    assertThat(ProblemText.of(problem, 80))
        .isEqualTo(
            """
            line 2, column 23  /relay/startDelay_min
            This value is physically impossible
                "startDelay_min": 1500,
                                  ^^^^
            found  1500
            right  0 to 1440 min
            near   startDelay_min
            """);
  }

  @Test
  void groupsByFile() {
    Problem one =
        Problem.of(Source.named("a.json"), Problem.Kind.NO_SUCH_FILE, "nothing", "a file");
    Problem two = at("1500", "1500");
    Problem three = Problem.of(Source.named("a.json"), Problem.Kind.EMPTY, "", "one section");
    assertThat(ProblemText.of(List.of(one, two, three), 80))
        .isEqualTo(
            """
            a.json

            There is no such file
            found  nothing
            right  a file

            This file is empty
            right  one section

            mill.json

            line 1, column 1  /relay/startDelay_min
            This value is physically impossible
                1500
                ^^^^
            found  1500
            right  0 to 1440 min
            """);
  }

  @Test
  void saysTheSameMistakeOnceWithItsPlaces() {
    Source source = Source.of("x.json", "{ \"a\": 1,5,\n  \"b\": 2,5;\n  \"c\": 3,5 }");
    List<Problem> problems = new ArrayList<>();
    for (int at : new int[] {7, 19, 31}) {
      String found = source.slice(new Span(at, at + 3));
      problems.add(
          Problem.of(source, Problem.Kind.DECIMAL_COMMA, found, found.replace(',', '.'))
              .at(new Span(at, at + 3)));
    }
    problems.add(Problem.of(source, Problem.Kind.SEMICOLON, ";", ",").at(new Span(22, 23)));
    assertThat(ProblemText.of(problems, 80))
        .isEqualTo(
            """
            x.json

            line 1, column 8
            A comma is used as the decimal point, in 3 places
                { "a": 1,5,
                       ^^^
            found  1,5
            right  1.5
            also   line 2, column 8; line 3, column 8

            line 2, column 11
            A semicolon is used in place of a comma
                "b": 2,5;
                        ^
            found  ;
            right  ,
            """);
  }

  @Test
  void listsTwentyPlacesOfAMistake() {
    Source source = Source.of("x.json", "\n".repeat(30));
    List<Problem> problems =
        IntStream.range(0, 30)
            .mapToObj(at -> Problem.of(source, Problem.Kind.COMMA_MISSING, "", ",").at(Span.at(at)))
            .toList();
    assertThat(ProblemText.of(problems, 400)).contains("in 30 places").contains("; and 9 more\n");
  }

  @Test
  void namesTheEarlierPlaceByWhatItIs() {
    Source source = Source.of("x.json", "{ \"a\": 1,\n  \"a\": 2 }");
    Problem twice =
        Problem.of(source, Problem.Kind.NAME_TWICE, "\"a\"", "each name once in a section")
            .at(new Span(12, 15))
            .earlier(new Span(2, 5));
    assertThat(ProblemText.of(twice, 80))
        .contains("line 2, column 3\n")
        .contains("first  line 1, column 3\n");
    assertThat(twice.earlierPlace()).contains(new Place(1, 3, 2));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"delay\": 1500",
        "\"Verzögerung\": 1500",
        "\"e\u0301e\u0301\": 1500",
        "\"日本語\": 1500",
        "\"🔥🔥 \u2600\ufe0f\": 1500",
        "\t\"delay\":\t1500",
        "   \"a\tb\":  1500, \"c\": 2",
        "\"\u202e\u001b[31m\": 1500",
        "\uFEFF\"delay\": 1500"
      })
  void setsTheCaretUnderTheValue(String line) {
    assertCaretUnder("{\n" + line + "\n}", "1500");
  }

  @Test
  void marksWideValuesWhole() {
    assertCaretUnder("{ \"at\": \"日本🔥\" }", "\"日本🔥\"");
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 10, 40, 60, 70, 75, 80, 100, 500, 5000})
  void cutsLongLinesAroundTheValue(int before) {
    for (int after : new int[] {0, 1, 5, 40, 79, 1000}) {
      String text = "a".repeat(before) + "1500" + "日".repeat(after);
      List<String> lines = ProblemText.of(at(text, "1500"), 80).lines().toList();
      assertThat(Printable.width(lines.get(2))).as(lines.get(2)).isLessThanOrEqualTo(80);
      assertThat(lines.get(3).trim()).isEqualTo("^^^^");
      int column = lines.get(3).indexOf('^');
      assertThat(lines.get(2).substring(column)).as(lines.get(2)).startsWith("1500");
      assertThat(lines.get(2).contains("…")).isEqualTo(before + 2 * after + 4 > 76);
    }
  }

  @Test
  void cutsALongValueToo() {
    String value = "\"" + "x".repeat(500) + "\"";
    List<String> lines =
        ProblemText.of(at("{ \"name\": " + value + " }", value), 80).lines().toList();
    assertThat(Printable.width(lines.get(2))).isLessThanOrEqualTo(80);
    assertThat(lines.get(2)).endsWith("…");
    assertThat(lines.get(3).length()).isLessThanOrEqualTo(80);
    assertThat(lines.get(2).charAt(lines.get(3).indexOf('^'))).isEqualTo('"');
  }

  @Test
  void marksTheFirstCharacterOfWhatSpansLines() {
    String text = "{ \"a\": {\n  \"b\": 1\n} }";
    Problem problem = at(text, "{\n  \"b\": 1\n}");
    assertThat(ProblemText.of(problem, 80)).contains("    { \"a\": {\n           ^\n");
  }

  @Test
  void marksThePointAfterTheLastCharacter() {
    Source source = Source.of("x.json", "{ \"a\": 1\n}");
    Problem missing =
        Problem.of(source, Problem.Kind.COMMA_MISSING, "\"b\"", ", before it").at(Span.at(8));
    assertThat(ProblemText.of(missing, 80)).contains("    { \"a\": 1\n            ^\n");
  }

  @Test
  void marksTheEndOfTheFile() {
    Source source = Source.of("x.json", "{ }\n");
    Problem end = Problem.of(source, Problem.Kind.NOT_JSON, "x", "y").at(Span.at(4));
    assertThat(ProblemText.of(end, 80))
        .startsWith("line 2, column 1\n")
        .contains("\n    \n    ^\n");
  }

  @Test
  void wrapsWhatWouldBeRight() {
    Problem problem =
        Problem.of(Source.named("x"), Problem.Kind.NOT_A_CHOICE, "roof", "bath ".repeat(30).trim());
    for (String line : ProblemText.of(problem, 60).lines().toList()) {
      assertThat(line.length()).isLessThanOrEqualTo(60);
    }
    assertThat(ProblemText.of(problem, 60)).contains("right  bath").contains("\n       bath");
  }

  @Test
  void breaksLinesOnlyWhereTheyAreFull() {
    Problem problem =
        Problem.of(
            Source.named("x"), Problem.Kind.NOT_A_CHOICE, "roof", "abcd efgh ijklmnopqrs tuv wx");
    assertThat(ProblemText.of(problem, 30))
        .isEqualTo(
            """
            This is not one of the words to choose from
            found  roof
            right  abcd efgh ijklmnopqrs
                   tuv wx
            """);
    Problem full =
        Problem.of(
            Source.named("x"), Problem.Kind.NOT_A_CHOICE, "roof", "abcd efgh ijklmnopqrstu v");
    assertThat(ProblemText.of(full, 30)).endsWith("right  abcd efgh ijklmnopqrstu\n       v\n");
  }

  @Test
  void cutsAPointerThatIsTooLong() {
    Problem problem =
        Problem.of(Source.of("x", "1"), Problem.Kind.UNKNOWN_NAME, "", "")
            .at(Pointer.root().child("x".repeat(61)), new Span(0, 1));
    assertThat(ProblemText.of(problem, 80))
        .startsWith("line 1, column 1  /" + "x".repeat(61) + "\n");
    String cut = ProblemText.of(problem, 79).lines().findFirst().orElseThrow();
    assertThat(cut).hasSize(79).startsWith("line 1, column 1  /xx").contains("…").endsWith("xx");
  }

  @Test
  void letsNoFileDriveTheTerminal() {
    String evil = "\u001b]0;gone\u0007\u202e";
    Source source = Source.of("\u001b[2J.json", "{ \"" + evil + "\": \"" + evil + "\" }");
    Problem problem =
        Problem.of(source, Problem.Kind.UNKNOWN_NAME, evil, evil)
            .at(Pointer.root().child(evil), new Span(2, 6))
            .near(evil);
    String shown = ProblemText.of(List.of(problem), 80);
    assertThat(shown.chars().filter(c -> c != '\n' && Character.getType(c) == Character.CONTROL))
        .isEmpty();
    assertThat(shown).doesNotContain("\u202e");
  }

  @Test
  void isOrderedByPlace() {
    Source source = Source.of("x", "abcdef");
    Problem whole = Problem.of(source, Problem.Kind.EMPTY, "", "");
    Problem early = Problem.of(source, Problem.Kind.WRONG_KIND, "", "").at(new Span(1, 2));
    Problem late = Problem.of(source, Problem.Kind.NAME_TWICE, "", "").at(new Span(3, 4));
    Problem named = late.at(Pointer.parse("/a"), new Span(3, 4));
    assertThat(List.of(named, late, early, whole).stream().sorted(Problem.inOrder()))
        .containsExactly(whole, early, late, named);
  }

  @Test
  void namesKindsForPrograms() {
    assertThat(Problem.Kind.DECIMAL_COMMA.key()).isEqualTo("decimal-comma");
    Problem near = at("1500", "1500").near(java.util.Optional.of("x"));
    assertThat(near.nearest()).isEqualTo("x");
    assertThat(near.near(java.util.Optional.empty()).nearest()).isNull();
    assertThat(at("1500", "1500").says()).isEqualTo(Problem.Kind.OUT_OF_RANGE.says());
  }

  @Test
  void fitsLongNamesAndWordsIntoTheWidth() {
    String name = "日".repeat(300) + "x".repeat(300);
    Problem problem =
        Problem.of(Source.of("x", "{ }"), Problem.Kind.UNKNOWN_NAME, name, "y".repeat(300))
            .at(Pointer.root().child(name), new Span(0, 1));
    for (String line : ProblemText.of(problem, 80).lines().toList()) {
      assertThat(Printable.width(line)).as(line).isLessThanOrEqualTo(80);
    }
  }

  @Test
  void headsEachKindWithAShortSentenceOfItsOwn() {
    List<Problem.Kind> kinds = List.of(Problem.Kind.values());
    assertThat(kinds).extracting(Problem.Kind::says).doesNotHaveDuplicates();
    for (Problem.Kind kind : kinds) {
      assertThat(kind.says()).hasSizeLessThan(70).doesNotEndWith(".").matches("[A-Zt].*");
      assertThat(kind.key()).matches("[a-z0-9]+(-[a-z0-9]+)*");
    }
  }
}
