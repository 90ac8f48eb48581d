package deadband.reading;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.document.Place;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.ProblemText;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is wrong with a day file is told with its place, what was found, what would be right. */
class ProfileProblemTest {

  private static List<Problem> problems(String text) {
    return problems(text, Gaps.refused());
  }

  private static List<Problem> problems(String text, Gaps gaps) {
    ProfileReading reading = ProfileReading.ofText("day.csv", text, gaps);
    assertThat(reading).isInstanceOf(ProfileReading.Unreadable.class);
    return ((ProfileReading.Unreadable) reading).problems();
  }

  private static Problem only(String text) {
    List<Problem> problems = problems(text);
    assertThat(problems).hasSize(1);
    return problems.get(0);
  }

  private static void isAt(Problem problem, int line, int column) {
    assertThat(problem.place().map(Place::toString))
        .contains("line " + line + ", column " + column);
  }

  @ParameterizedTest
  @MethodSource("nothing")
  void nothingIsEmpty(String text) {
    assertThat(only(text).kind()).isEqualTo(Kind.EMPTY);
  }

  static List<String> nothing() {
    return List.of("", "\n\n", "# only a word\n", "\uFEFF", ",,\n");
  }

  @Test
  void anUnknownColumnIsToldWithTheNearestName() {
    Problem problem = only("time,pv_kw,house_kW\n10:00,1,1\n10:01,1,1\n");
    assertThat(problem.kind()).isEqualTo(Kind.UNKNOWN_NAME);
    assertThat(problem.nearest()).isEqualTo("pv_kW");
    assertThat(problem.found()).isEqualTo("pv_kw");
    assertThat(problem.right()).contains("surplus_W").contains("draw_L");
    isAt(problem, 1, 6);
  }

  @ParameterizedTest
  @CsvSource({
    "Time,time",
    "PV [kW],pv_kW",
    "house,house_kW",
    "draw_l,draw_L",
    "suplus_W,surplus_W"
  })
  void nearNamesAreFound(String written, String meant) {
    List<Problem> problems = problems("\"" + written + "\",x\n");
    assertThat(problems.get(0).nearest()).isEqualTo(meant);
  }

  @Test
  void columnsThatAreMissingAreNamed() {
    assertThat(only("pv_kW\n1\n2\n").right()).contains("time");
    assertThat(only("time\n10:00\n10:01\n").right()).contains("pv_kW");
  }

  @Test
  void aColumnStandsOnce() {
    Problem problem = only("time,pv_kW,pv_W\n10:00,1,1\n");
    assertThat(problem.kind()).isEqualTo(Kind.NAME_TWICE);
    isAt(problem, 1, 12);
    assertThat(problem.earlierPlace().map(Place::column)).contains(6);
    assertThat(only("time,time,pv_W\n").kind()).isEqualTo(Kind.NAME_TWICE);
  }

  @Test
  void surplusStandsWithoutItsParts() {
    List<Problem> problems = problems("time,surplus_kW,pv_kW,house_W\n10:00,1,1,1\n10:01,1,1,1\n");
    assertThat(problems)
        .extracting(Problem::kind)
        .containsExactly(Kind.NOT_FITTING, Kind.NOT_FITTING);
    assertThat(problems.get(0).found()).isEqualTo("pv_kW beside surplus_kW");
    assertThat(problems.get(1).found()).isEqualTo("house_W beside surplus_kW");
  }

  @ParameterizedTest
  @CsvSource({
    "lots, WRONG_KIND, a number such as 3.5",
    "0x10, WRONG_KIND, a number such as 3.5",
    "1f, UNIT_WRITTEN, 1; the unit stands in the header",
    "3 kW, UNIT_WRITTEN, 3; the unit stands in the header",
    "NaN, NOT_FINITE, a number such as 3.5",
    "-inf, NOT_FINITE, a number such as 3.5",
    "1e999, NOT_FINITE, a number such as 3.5",
    "−3, LONG_MINUS, -3",
    "1 234.5, DIGITS_GROUPED, 1234.5",
    "'\"3,5\"', DECIMAL_COMMA, 3.5",
    "'\"1,234.5\"', DIGITS_GROUPED, the digits without marks between them",
    "'', VALUE_MISSING, 'a number, 0 for none; or use --fill-gaps 5'",
    "-0.1, OUT_OF_RANGE, 0 or more; the power input of an inverter at night is house load",
  })
  void aCellThatIsNoNumberIsToldWithItsPlace(String cell, Kind kind, String right) {
    Problem problem = only("time,pv_kW\n10:00,1\n10:01," + cell + "\n10:02,1\n");
    assertThat(problem.kind()).isEqualTo(kind);
    assertThat(problem.right()).isEqualTo(right);
    assertThat(problem.place().map(Place::line)).contains(3);
    assertThat(problem.place().map(Place::column).orElseThrow()).isBetween(7, 8);
  }

  @Test
  void drawOffIsNeverNegativeAndAsksAboutLitresAnHour() {
    Problem negative = only("time,draw_L\n10:00,-1\n10:01,0\n");
    assertThat(negative.kind()).isEqualTo(Kind.OUT_OF_RANGE);
    Problem flow = only("time,draw_L\n10:00,0\n10:01,421\n10:02,553\n");
    assertThat(flow.kind()).isEqualTo(Kind.UNIT_DOUBTED);
    assertThat(flow.right()).contains("litres an hour");
    isAt(flow, 3, 7);
  }

  @Test
  void aPowerThatNoHomeHasAsksAboutWattsOnce() {
    Problem problem = only("time,house_kW\n10:00,0.3\n10:01,410\n10:02,420\n10:03,-430\n");
    assertThat(problem.kind()).isEqualTo(Kind.UNIT_DOUBTED);
    assertThat(problem.right()).contains("house_W");
    isAt(problem, 3, 7);
    assertThat(only("time,house_W\n10:00,100001\n10:01,1\n").right()).doesNotContain("_W");
  }

  @Test
  void aSurplusMayBeNegativeButNotBeyondReason() {
    assertThat(only("time,surplus_kW\n10:00,-2\n10:01,-2000\n").right()).contains("surplus_W");
  }

  @Test
  void pointsAndCommasAreNotMixed() {
    Problem problem = only("time;pv_W;house_W\n10:00;0.5;1\n10:01;1;1,234\n");
    assertThat(problem.kind()).isEqualTo(Kind.DIGITS_GROUPED);
    assertThat(problem.found()).isEqualTo("1,234");
    assertThat(problem.right()).contains("line 2 has a point");
    isAt(problem, 3, 9);
  }

  @Test
  void aCommaThatMayMarkThousandsIsAskedAbout() {
    Problem problem = only("time;pv_W\n10:00;1,234\n10:01;999\n");
    assertThat(problem.kind()).isEqualTo(Kind.DIGITS_GROUPED);
    assertThat(problem.right()).contains("thousands");
  }

  @ParameterizedTest
  @CsvSource({
    "25:00",
    "10:60",
    "10:00:60",
    "10.05",
    "noon",
    "10/14/2018 00:00",
    "24:00",
    "10:00:30.5"
  })
  void whatIsNoTimeIsToldWithTheForms(String time) {
    Problem problem = problems("time,pv_kW\n" + time + ",1\n10:01,1\n10:02,1\n").get(0);
    assertThat(problem.kind()).isEqualTo(Kind.NOT_A_TIME);
    assertThat(problem.found()).isEqualTo(time);
    assertThat(problem.right()).startsWith("HH:MM");
    isAt(problem, 2, 1);
  }

  @ParameterizedTest
  @CsvSource({
    "2026-02-30T10:00",
    "2026-13-01T10:00",
    "2026-04-21T10:00+19:00",
    "2026-04-21T10:00+1",
    "2026-04-21T10:00+1:00",
    "2026-04-21T10:00[Europe/Paris]",
    "2026-04-21x10:00",
    "2026-04-21",
    "2026-04-21T",
    "2026-04-21T10:00+",
    "2026-04-21T10:00+02:61",
  })
  void whatIsNoDateAndTimeIsRefused(String time) {
    assertThat(Stamp.of(time)).isNull();
  }

  @Test
  void timesAreOfOneKind() {
    Problem problem =
        only(
            "time,pv_kW\n10:00,1\n10:01,1\n2026-04-21T10:02,1\n10:03,1\n".replace("10:03,1\n", ""));
    assertThat(problem.kind()).isEqualTo(Kind.NOT_FITTING);
    assertThat(problem.found()).isEqualTo("a date and time");
    assertThat(problem.right()).isEqualTo("a time of day, as in line 2");
  }

  private static String clocks(String... times) {
    return "time,pv_kW\n" + String.join(",1\n", times) + ",1\n";
  }

  @Test
  void aGapIsToldWithItsLine() {
    Problem problem = only(clocks("10:00", "10:01", "10:02", "10:05", "10:06"));
    assertThat(problem.kind()).isEqualTo(Kind.TIME_GAP);
    assertThat(problem.found()).isEqualTo("2 rows of 1 min missing after line 4");
    assertThat(problem.right()).contains("--fill-gaps");
    isAt(problem, 5, 1);
  }

  @Test
  void aGapTooLongToFillIsRefused() {
    String text = clocks("10:00", "10:01", "10:02", "10:05", "10:06");
    List<Problem> problems = problems(text, Gaps.filledUpTo(1));
    assertThat(problems).extracting(Problem::kind).containsExactly(Kind.TIME_GAP);
    assertThat(problems.get(0).right()).contains("at most 1 min");
    assertThat(ProfileReading.ofText("m", text, Gaps.filledUpTo(2)))
        .isInstanceOf(ProfileReading.Read.class);
  }

  @Test
  void emptyCellsAreFilledNoLongerThanAsked() {
    List<Problem> problems =
        problems("time,pv_kW\n10:00,1\n10:01,\n10:02,\n10:04,1\n10:05,1\n", Gaps.filledUpTo(2));
    assertThat(problems).extracting(Problem::kind).containsExactly(Kind.VALUE_MISSING);
    isAt(problems.get(0), 5, 7);
    Problem first = problems("time,pv_kW\n10:00,\n10:01,1\n", Gaps.filledUpTo(2)).get(0);
    assertThat(first.right()).isEqualTo("a number to begin with");
  }

  @Test
  void repeatsAreTold() {
    Problem problem = only(clocks("10:00", "10:01", "10:01", "10:02"));
    assertThat(problem.kind()).isEqualTo(Kind.TIME_TWICE);
    assertThat(problem.found()).isEqualTo("the same time as in line 3");
    isAt(problem, 4, 1);
  }

  @Test
  void timeNeverGoesBack() {
    Problem problem = only(clocks("10:00", "10:01", "10:02", "10:00", "10:01", "10:03", "10:04"));
    assertThat(problem.kind()).isEqualTo(Kind.TIME_BACKWARDS);
    assertThat(problem.found()).isEqualTo("2 min before line 4");
    isAt(problem, 5, 1);
  }

  @Test
  void aTimeOffTheStepIsTold() {
    Problem problem = only(clocks("10:00", "10:05", "10:10", "10:16", "10:21"));
    assertThat(problem.kind()).isEqualTo(Kind.STEP_IRREGULAR);
    assertThat(problem.found()).isEqualTo("6 min after line 4");
    assertThat(problem.right()).isEqualTo("5 min after it, as between the other rows");
  }

  @ParameterizedTest
  @CsvSource({"10:07, 7 min", "12:00, 2 h", "10:00:13, 13 s"})
  void aStepThatDoesNotDivideAnHourIsTold(String next, String step) {
    Problem problem = only(clocks("10:00", next));
    assertThat(problem.kind()).isEqualTo(Kind.STEP_UNFIT);
    assertThat(problem.found()).isEqualTo("steps of " + step);
  }

  @Test
  void oneRowHasNoStep() {
    assertThat(only(clocks("10:00")).found()).isEqualTo("one row");
    assertThat(only("time,pv_kW\n").found()).isEqualTo("a header and no row");
    assertThat(only(clocks("10:00", "10:00")).kind()).isEqualTo(Kind.TIME_TWICE);
  }

  @Test
  void theSpringChangeOfTheClockIsHintedAt() {
    Problem problem =
        only(
            clocks("2026-03-29T01:30", "2026-03-29T01:45", "2026-03-29T03:00", "2026-03-29T03:15"));
    assertThat(problem.found()).endsWith("write each time with its offset");
  }

  @Test
  void rowsHaveTheCellsOfTheHeader() {
    Problem fewer =
        only("time,pv_kW,draw_L\n10:00,1,0\n10:01,1\n10:02,1,0\n".replace("10:02,1,0\n", ""));
    assertThat(fewer.found()).isEqualTo("2 cells");
    Problem more = problems("time,pv_kW\n10:00,1,5\n10:01,1,5\n").get(0);
    assertThat(more.found()).isEqualTo("3 cells");
    assertThat(more.right()).contains("decimals with a point");
  }

  @Test
  void aQuoteThatIsNotClosedIsToldWhereItBegins() {
    List<Problem> problems = problems("time,pv_kW\n10:00,1\n10:01,\"1\n10:02,1\n10:03,1\n");
    assertThat(problems.get(0).kind()).isEqualTo(Kind.QUOTE_NOT_CLOSED);
    assertThat(problems.get(0).place().map(Place::line)).contains(3);
  }

  @Test
  void allIsToldAtOnceInOrderAndBounded() {
    StringBuilder text = new StringBuilder("time,pv_kW,house_kW\n");
    for (int minute = 10; minute < 60; minute++) {
      text.append("10:").append(minute).append(",x,y\n");
    }
    List<Problem> problems = problems(text.toString());
    assertThat(problems).hasSize(Problems.MOST + 1);
    assertThat(problems.get(0).found()).isEqualTo("x");
    assertThat(problems.get(1).found()).isEqualTo("y");
    assertThat(problems.get(Problems.MOST).kind()).isEqualTo(Kind.TOO_MANY);
  }

  @Test
  void cellsAndTimesAreToldTogether() {
    List<Problem> problems = problems("time,pv_kW\n10:00,1\n10:01,x\n10:03,1\n10:04,1\n");
    assertThat(problems).extracting(Problem::kind).containsExactly(Kind.WRONG_KIND, Kind.TIME_GAP);
  }

  @Test
  void aFileThatIsTooLargeIsNotRead() {
    byte[] blanks = new byte[ProfileReading.MOST_BYTES + 1];
    ProfileReading reading = ProfileReading.ofStream("-", new ByteArrayInputStream(blanks));
    Problem problem = ((ProfileReading.Unreadable) reading).problems().get(0);
    assertThat(problem.kind()).isEqualTo(Kind.TOO_LARGE);
    assertThat(problem.right()).isEqualTo("at most 64 MiB");
  }

  @Test
  void aFileThatIsNotThereIsTold(@TempDir Path folder) {
    ProfileReading reading = ProfileReading.ofFile(folder.resolve("none.csv"));
    assertThat(((ProfileReading.Unreadable) reading).problems().get(0).kind())
        .isEqualTo(Kind.NO_SUCH_FILE);
    assertThat(((ProfileReading.Unreadable) ProfileReading.ofFile(folder)).problems().get(0).kind())
        .isEqualTo(Kind.A_FOLDER);
  }

  @Test
  void readsAsATextForPeople() {
    List<Problem> problems = problems("time,pv_kW\n10:00,1\n10:01,3 kW\n10:02,1\n");
    assertThat(ProblemText.of(problems, 80))
        .isEqualTo(
            """
            day.csv

            line 3, column 7
            A unit is written after a number
                10:01,3 kW
                      ^^^^
            found  3 kW
            right  3; the unit stands in the header
            """);
  }

  private static final String[] PIECES = {
    "time",
    "pv_kW",
    "surplus_W",
    "draw_L",
    ",",
    ";",
    "\t",
    "\n",
    "\r\n",
    "\"",
    "#",
    " ",
    "10:00",
    "10:01",
    "23:59",
    "2026-04-21T10:00",
    "+02:00",
    "Z",
    "-",
    "1",
    "0.5",
    "1,5",
    "NaN",
    "é",
    "\uFEFF",
    "1e9",
    "-3",
    "time,pv_kW\n",
    "10:00,1\n",
    "10:05,2\n"
  };

  /** Whatever the text: an outcome, no exception, places inside the text, a text for people. */
  @Test
  void takesAnyText() {
    Random random = new Random(5);
    for (int number = 0; number < 20_000; number++) {
      StringBuilder text = new StringBuilder(random.nextBoolean() ? "time,pv_kW\n" : "");
      for (int length = random.nextInt(24); length > 0; length--) {
        text.append(PIECES[random.nextInt(PIECES.length)]);
      }
      ProfileReading reading =
          ProfileReading.ofText("m", text.toString(), Gaps.filledUpTo(random.nextInt(3)));
      if (reading instanceof ProfileReading.Unreadable unreadable) {
        assertThat(unreadable.problems()).isNotEmpty();
        assertThat(ProblemText.of(unreadable.problems(), 80)).isNotEmpty();
      }
    }
  }

  @Test
  void takesAnyBytes() {
    Random random = new Random(6);
    for (int number = 0; number < 5000; number++) {
      byte[] bytes = new byte[random.nextInt(60)];
      random.nextBytes(bytes);
      assertThat(ProfileReading.ofStream("m", new ByteArrayInputStream(bytes)))
          .isInstanceOf(ProfileReading.Unreadable.class);
    }
    byte[] latin = "time,pv_kW\n# Süden\n".getBytes(StandardCharsets.ISO_8859_1);
    ProfileReading reading = ProfileReading.ofStream("m", new ByteArrayInputStream(latin));
    assertThat(((ProfileReading.Unreadable) reading).problems().get(0).kind())
        .isEqualTo(Kind.NOT_UTF8);
  }
}
