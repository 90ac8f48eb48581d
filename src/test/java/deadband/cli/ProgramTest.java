package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.Snapshot;
import deadband.judging.Check;
import deadband.judging.RuleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProgramTest {

  private static final String SHORT = "sample-configs/good/slate-cottage.json";
  private static final String GOOD = "sample-configs/good/mill-cottage.json";
  private static final String FAULTY = "sample-configs/faulty/stop-just-under-start.json";
  private static final String AS_OF = "--as-of=2026-05-31";

  @TempDir private Path folder;

  private String file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  @Test
  void theNameAloneSaysHowToBeginAndThatNothingWasChecked() {
    CommandLineRun run = CommandLineRun.of();

    assertThat(run.exit()).isEqualTo(Exit.NOTHING_CHECKED);
    assertThat(run.out().lines()).hasSize(5);
    assertThat(run.out()).contains("deadband new", "deadband check", "deadband --help");
  }

  @Test
  void aGoodSetupEndsWithZero() {
    CommandLineRun run = CommandLineRun.of("check", GOOD);

    assertThat(run.exit()).isEqualTo(0);
    assertThat(run.out()).contains("READY FOR SIGN-OFF");
    assertThat(run.err()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"answers-needed, 1", "not-ready, 1", "never, 0"})
  void failOnDecidesWhatAVerdictEndsWith(String failOn, int exit) {
    assertThat(CommandLineRun.of("check", "--fail-on", failOn, FAULTY).exit()).isEqualTo(exit);
  }

  @Test
  void theHighestStatusOfSeveralFilesWins() throws IOException {
    String empty = file("empty.json", "{}");
    String broken = file("broken.json", "{ \"relay\": ");

    assertThat(CommandLineRun.of("check", GOOD, FAULTY).exit()).isEqualTo(1);
    assertThat(CommandLineRun.of("check", GOOD, broken).exit()).isEqualTo(3);
    assertThat(CommandLineRun.of("check", GOOD, broken, empty).exit()).isEqualTo(4);
  }

  @Test
  void aFolderMayHoldDaysBesideItsSetups() throws IOException {
    Files.copy(Path.of(GOOD), folder.resolve("mill-cottage.json"));
    file("day.csv", "time,pv_kW\n10:00,1\n");

    assertThat(CommandLineRun.of("check", folder.toString()).exit()).isEqualTo(0);
  }

  @Test
  void houseRulesJudgeNextToTheOthersAndAreSaidToBeCode() throws IOException {
    String developers = Files.readString(Path.of("DEVELOPERS.md"));
    int start = developers.indexOf("```drl\n") + 7;
    file("house.drl", developers.substring(start, developers.indexOf("```", start)));
    CommandLineRun run = CommandLineRun.of("check", AS_OF, "--rules", folder.toString(), FAULTY);

    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.err()).startsWith("house rules are code and run with your rights");
    assertThat(run.out())
        .contains("QUERY    Start and stop are closer than we leave them")
        .contains("   gap-below-our-margin (house rule)");
    CommandLineRun json =
        CommandLineRun.of("check", "--format=json", "--rules", folder.toString(), FAULTY);
    assertThat(json.out()).contains("\"houseRule\"");
  }

  @Test
  void aBrokenHouseRuleEndsBeforeAnythingIsJudged() throws IOException {
    file("house.drl", "package house;\nrule \"x\" whn\n");
    CommandLineRun run = CommandLineRun.of("check", "--rules", folder.toString(), FAULTY);

    assertThat(run.exit()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("house.drl", "line 2", "rule compiler").doesNotContain("\tat ");
  }

  @Test
  void anEmptyObjectIsNotSuccess() {
    CommandLineRun run = CommandLineRun.with("{}", Map.of(), "check", "-");

    assertThat(run.exit()).isEqualTo(4);
    assertThat(run.err()).contains("nothing could be checked");
  }

  @Test
  void aSectionNotEnteredIsAskedForOnce() {
    String setup = "{ \"site\": { \"country\": \"GB\" } }";
    CommandLineRun run = CommandLineRun.with(setup, Map.of(), "check", "--all", "-");

    assertThat(run.out().replaceAll("\\s+", " "))
        .containsOnlyOnce("Is a surplus controller fitted that feeds the immersion heater? (look)")
        .contains("ambient-above-rating")
        .doesNotContain("diverter.ambient_C");
  }

  /** A home of which little is entered gives a report that fits on a screen or two. */
  @ParameterizedTest
  @ValueSource(ints = {60, 80, 120})
  void whatWasNotJudgedTakesTenLinesAtMost(int columns) {
    String setup =
        "{ \"relay\": { \"start_kW\": 3, \"stop_kW\": 3 }, \"battery\": { \"fitted\": false } }";
    Map<String, String> environment = Map.of("COLUMNS", Integer.toString(columns));
    CommandLineRun run = CommandLineRun.with(setup, environment, "check", "-");

    List<String> lines = run.out().lines().toList();
    int first =
        lines.indexOf(
            lines.stream().filter(l -> l.contains(" checks need ")).findFirst().orElseThrow());
    List<String> questions =
        lines.subList(first, first + lines.subList(first, lines.size()).indexOf(""));
    assertThat(questions).hasSizeBetween(6, 10).allMatch(line -> line.length() <= columns);
    assertThat(lines.get(lines.size() - 1)).startsWith("verdict ").endsWith("NOT TO BE SIGNED OFF");
  }

  @Test
  void theVerdictIsNotRepeatedWhereItIsStillInSight() {
    CommandLineRun run = CommandLineRun.of("check", AS_OF, SHORT);

    assertThat(run.out()).containsOnlyOnce("READY FOR SIGN-OFF");
  }

  @Test
  void standardInputHasAName() {
    CommandLineRun run =
        CommandLineRun.with("{ \"relay\": 3 }", Map.of(), "check", "-", "--name", "from the desk");

    assertThat(run.exit()).isEqualTo(3);
    assertThat(run.out()).startsWith("from the desk\n");
  }

  @Test
  void everyProblemOfAFileIsTold() {
    String text = "{ \"relay\": { \"strat_kW\": 1, \"stop_kW\": 2700 }, \"tank\": [] }";

    CommandLineRun run = CommandLineRun.with(text, Map.of(), "check", "-");

    assertThat(run.out())
        .contains("near   start_kW", "if watts were meant, 2.7", "/tank", "line 1, column 14");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "chek",
        "check --formt json",
        "check --format xml x",
        "check",
        "explain",
        "check --as-of 31.5.2026 x"
      })
  void wrongUseIsSaidInASentence(String line) {
    CommandLineRun run = CommandLineRun.of(line.split(" ", -1));

    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("help: deadband").doesNotContain("Exception", "\tat ");
  }

  @Test
  void theNearestNameIsOffered() {
    assertThat(CommandLineRun.of("chek").err()).contains("nearest: check");
    assertThat(CommandLineRun.of("check", "--formt", "json", "x").err())
        .contains("nearest: --format");
    CommandLineRun explain = CommandLineRun.of("explain", "stop-not-bellow-start");
    assertThat(explain.err()).contains("nearest: stop-not-below-start");
    assertThat(explain.exit()).isEqualTo(2);
  }

  /** What explains a check is shown, wrapped and without marks; the cases that test it are not. */
  @ParameterizedTest
  @ValueSource(ints = {60, 80, 120})
  void explainShowsThePageWithoutItsTests(int columns) {
    Map<String, String> environment = Map.of("COLUMNS", Integer.toString(columns));
    CommandLineRun run =
        CommandLineRun.with("", environment, "explain", "gap-below-heat-pump-draw");

    assertThat(run.exit()).isEqualTo(0);
    assertThat(run.out())
        .startsWith("gap-below-heat-pump-draw ")
        .contains("\nWhy it matters\n", "[short-cycling", "\nWhat it misses\n")
        .doesNotContain("Fires", "Stays silent", "At the edge", "Not judged", "`", "{", "|");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= columns);
    assertThat(run.out().lines()).anyMatch(line -> line.length() > columns - 12);
  }

  @Test
  void explainKnowsANameThatACheckHadBefore() {
    CommandLineRun run = CommandLineRun.of("explain", "too-rare");

    assertThat(run.exit()).isEqualTo(0);
    assertThat(run.err()).contains("too-rare is now called disinfection-too-rare");
    assertThat(run.out()).startsWith("disinfection-too-rare ");
  }

  @Test
  void checksListsThemAll() {
    List<String> names = RuleBook.builtIn().checks().stream().map(Check::name).toList();

    assertThat(CommandLineRun.of("checks").out()).contains(names);
    assertThat(CommandLineRun.of("checks", "--format", "json").out()).contains(names);
  }

  @Test
  void severalFilesInJsonAreAnArrayAndInJsonlALineEach() throws IOException {
    String broken = file("broken.json", "{");

    CommandLineRun array = CommandLineRun.of("check", "--format", "json", GOOD, FAULTY);
    CommandLineRun lines = CommandLineRun.of("check", "--format", "jsonl", GOOD, FAULTY, broken);

    assertThat(array.out()).startsWith("[\n{").endsWith("}\n]\n");
    assertThat(lines.out().lines())
        .hasSize(3)
        .allMatch(line -> line.startsWith("{\"deadband\":2,"));
    assertThat(lines.out()).contains("\"problems\":[");
    assertThat(lines.err()).isEmpty();
  }

  @Test
  void aFolderStandsForTheSetupsInIt() {
    CommandLineRun run = CommandLineRun.of("check", "sample-configs/good");

    assertThat(run.exit()).isEqualTo(0);
    assertThat(run.err()).contains("files: ").contains("ready for sign-off");
  }

  @Test
  void theSameInputGivesTheSameBytes() {
    for (String format : List.of("text", "json", "jsonl")) {
      String first = CommandLineRun.of("check", AS_OF, "--format", format, FAULTY).out();

      assertThat(CommandLineRun.of("check", AS_OF, "--format", format, FAULTY).out())
          .isEqualTo(first);
    }
  }

  /** With its days at the narrowest, where lines break the most. */
  @ParameterizedTest
  @ValueSource(ints = {60, 80, 120})
  void noLineIsWiderThanTheTerminal(int columns) {
    String days = columns == 60 ? "--fail-on=answers-needed" : "--no-day-run";
    Map<String, String> environment = Map.of("COLUMNS", Integer.toString(columns));

    CommandLineRun run =
        CommandLineRun.with("", environment, "check", AS_OF, days, "sample-configs/faulty");

    assertThat(run.out().lines().count()).isGreaterThan(1000);

    assertThat(run.out().lines().filter(line -> line.codePointCount(0, line.length()) > columns))
        .isEmpty();
  }

  @Test
  void colourIsForTerminalsUnlessAskedFor() {
    assertThat(CommandLineRun.of("check", FAULTY).out()).doesNotContain("\u001b");
    assertThat(CommandLineRun.of("check", "--color", "always", FAULTY).out()).contains("\u001b[1m");
  }

  @Test
  void aSiteSetsItsOwnLimits() throws IOException {
    String limits =
        file("limits.json", "{ \"cloudCost_kWh\": { \"value\": 0.01, \"source\": \"our own\" } }");

    CommandLineRun run = CommandLineRun.of("check", "--limits", limits, GOOD);

    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).contains("delay-longer-than-useful", "cloudCost_kWh: our own");
  }

  @Test
  void aLimitOfAnUnknownNameIsAProblem() throws IOException {
    CommandLineRun run =
        CommandLineRun.of("check", "--limits", file("l.json", "{ \"cloudcost\": 1 }"), GOOD);

    assertThat(run.exit()).isEqualTo(3);
    assertThat(run.err()).contains("near   cloudCost_kWh");
  }

  @Test
  @Tag("snapshot")
  void goldenReports() {
    Path golden = Path.of("src/test/resources/deadband/cli");
    for (String format : List.of("text", "json", "jsonl")) {
      Path file = golden.resolve("bath-as-hot-as-the-tank." + format);
      String out =
          CommandLineRun.of(
                  "check",
                  AS_OF,
                  "--format",
                  format,
                  "sample-configs/faulty/bath-as-hot-as-the-tank.json")
              .out();
      Snapshot.isKept(file, out, Snapshot::apartFromRuleBook);
    }
  }

  @Test
  void theVersionIsToldInOneLine() {
    assertThat(CommandLineRun.of("--version").out()).matches("deadband \\d+\\.\\d+\\.\\d+\n");
  }

  /** The list of the rule book that is kept beside the rules is the one the program prints. */
  @Test
  @Tag("snapshot")
  void theListBesideTheRulesIsTheProgramsOwn() {
    CommandLineRun run = CommandLineRun.of("checks", "--format", "markdown");

    Snapshot.isKept(Path.of("rules/README.md"), run.out());
  }

  @Test
  void daysLeftOutAreTold() {
    String home = "sample-configs/good/mill-cottage.json";
    CommandLineRun run = CommandLineRun.of("check", "--no-day-run", home);

    assertThat(run.exit()).isEqualTo(Exit.VERDICT);
    assertThat(run.out())
        .contains("ANSWERS NEEDED", "not judged      example days skipped: ", "starts-above-limit")
        .doesNotContain("example days    clear");
    assertThat(CommandLineRun.of("check", "--no-day-run", "--format", "json", home).out())
        .contains("\"exampleDays\": null");
  }

  /** The last line says what to do: propose where a remedy was proven, else read the page. */
  @Test
  void theLastLineSaysWhatToDoNext() throws IOException {
    String near = "sample-configs/faulty/stop-just-under-start.json";
    String text = Files.readString(Path.of(near));

    assertThat(CommandLineRun.of("check", near).err())
        .isEqualTo("next: deadband propose " + near + System.lineSeparator());
    assertThat(CommandLineRun.with(text, Map.of(), "check", "-").err())
        .contains("next: deadband explain gap-below-heat-pump-draw");
    assertThat(CommandLineRun.of("check", "sample-configs/faulty/loop-that-never-rests.json").err())
        .contains("next: deadband explain circulation-cools-store");
  }

  /** One line a headline, the same exit status, and nothing of the remedies. */
  @Test
  void briefIsVerdictAndHeadlines() {
    CommandLineRun brief = CommandLineRun.of("check", AS_OF, "--brief", FAULTY);

    assertThat(brief.exit()).isEqualTo(1);
    assertThat(brief.err()).isEmpty();
    assertThat(brief.out().lines())
        .hasSize(4)
        .last()
        .isEqualTo("1  DAMAGE   Relay drops out as soon as the heat pump starts: short-cycling");
  }

  @Test
  void briefOfSeveralFilesIsATableWithTheWorstFirst() throws IOException {
    String broken = file("broken.json", "{");
    CommandLineRun brief = CommandLineRun.of("check", AS_OF, "--brief", GOOD, FAULTY, broken);

    assertThat(brief.exit()).isEqualTo(3);
    assertThat(brief.out().lines().filter(line -> line.matches("\\S.*")))
        .extracting(line -> line.split("  ", 0)[0])
        .containsExactly("verdict", "not read", "not-ready", "ready", "total");
    assertThat(brief.out().replaceAll("\\s+", " "))
        .contains("not-ready 0 1 0 0 0 0 gap-below-heat-pump-draw, " + FAULTY)
        .contains("3 files: 1 ready for sign-off, 1 not to be signed off, 1 unreadable");
  }

  @Test
  void briefIsNoJson() {
    assertThat(CommandLineRun.of("check", "--brief", "--format", "json", GOOD).exit()).isEqualTo(2);
  }
}
