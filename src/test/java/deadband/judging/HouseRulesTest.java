package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import deadband.days.DayRuns;
import deadband.document.Place;
import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.limits.Limits;
import deadband.reading.SetupReading;
import deadband.setup.Setup;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rules of a house judge next to the built-in ones, or are refused with their place. */
class HouseRulesTest {

  private static final LocalDate DATE = LocalDate.of(2026, 5, 31);

  @TempDir private Path folder;

  /** The worked example, as DEVELOPERS.md prints it. */
  private static String example() {
    Matcher block =
        Pattern.compile("```drl\n(.*?)```", Pattern.DOTALL)
            .matcher(Setups.text(Path.of("DEVELOPERS.md")));
    assertThat(block.find()).isTrue();
    return block.group(1);
  }

  private HouseRules reading(String drl) throws IOException {
    Files.writeString(folder.resolve("house.drl"), drl);
    return HouseRules.in(folder);
  }

  private RuleBook book(String drl) throws IOException {
    HouseRules house = reading(drl);
    if (house instanceof HouseRules.Unreadable unreadable) {
      throw new AssertionError(unreadable.problems().toString());
    }
    return ((HouseRules.Read) house).book();
  }

  private List<Problem> problems(String drl) throws IOException {
    HouseRules house = reading(drl);
    assertThat(house).isInstanceOf(HouseRules.Unreadable.class);
    return ((HouseRules.Unreadable) house).problems();
  }

  private static Judgement judged(RuleBook book, String sample) {
    SetupReading reading = SetupReading.ofFile(Path.of("sample-configs", sample));
    return new Judge(book, DayRuns.none())
        .judge(((SetupReading.Read) reading).setup(), Limits.standard(), DATE);
  }

  @Test
  void theWorkedExampleFindsItsFaultAmongTheOthers() throws IOException {
    RuleBook book = book(example());
    assertThat(book.checks()).hasSize(RuleBook.builtIn().checks().size() + 1);
    Judgement judgement = judged(book, "faulty/stop-just-under-start.json");
    List<String> names = judgement.findings().stream().map(f -> f.check().name()).toList();
    assertThat(names).contains("gap-below-heat-pump-draw", "gap-below-our-margin");
    Finding own =
        judgement.findings().stream().filter(f -> f.check().isHouse()).findFirst().orElseThrow();
    assertThat(own.consequence()).isEqualTo(Consequence.QUERY);
    assertThat(own.detail().limit()).isNull();
    assertThat(own.check().topic()).isEqualTo("house");
    RulePage page = RulePage.of(own.check());
    assertThat(page.says()).isEqualTo("Start and stop are closer than we leave them");
    assertThat(page.why()).startsWith("Homes with less than");
  }

  @Test
  void aHouseRuleThatComparesNothingFindsNothingWhileTheCaseIsNotKnown() throws IOException {
    RuleBook book = book(example().replace("width_kW.isAtMost( draw_kW.plus( 0.5 ) )", ""));
    Setup setup =
        Setups.read(
                "house",
                """
                { "relay": { "drives": "heat pump", "counts": ["export"], "start_kW": 3.0 },
                  "heatPump": { "hotWaterInput_kW": 2.8 } }
                """)
            .setup();
    Judgement judgement =
        new Judge(book, DayRuns.none()).judge(setup, Limits.standard(), Setups.AS_OF);
    assertThat(judgement.findings()).noneMatch(finding -> finding.check().isHouse());
    assertThat(judgement.notJudged())
        .filteredOn(open -> open.check().isHouse())
        .singleElement()
        .satisfies(open -> assertThat(open.missing()).contains(Pointer.parse("/relay/stop_kW")));
  }

  @Test
  void aHouseRuleIsSilentWhereItsCaseIsInOrderAndTheBuiltInOnesStayAsTheyAre() throws IOException {
    RuleBook book = book(example().replace("plus( 0.5 )", "plus( -99 )"));
    String sample = "faulty/stop-just-under-start.json";
    Judgement with = judged(book, sample);
    assertThat(with.clear()).extracting(Check::name).contains("gap-below-our-margin");
    Judgement without = judged(RuleBook.builtIn(), sample);
    assertThat(with.findings().stream().map(Finding::key))
        .isEqualTo(without.findings().stream().map(Finding::key).toList());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "$gap : RelayGap( | $gap ; RelayGap( | 16 | mismatched input ';'",
        "when | whn | 13 | mismatched input 'whn'",
        ": RelayGap( width_kW | : RelayGapp( width_kW | 16 | RelayGapp",
        "thresholds.RelayGap; | thresholds.RelayGpa; | 5 | RelayGpa",
        "draw_kW.plus | drawn_kW.plus | 16 | drawn_kW",
        "found( kcontext | lost( kcontext | 9 | The method lost",
      })
  void whatDoesNotCompileIsToldOnceAndWithItsLine(
      String right, String wrong, int line, String found) throws IOException {
    List<Problem> problems = problems(example().replace(right, wrong));
    assertThat(problems).hasSize(1);
    Problem problem = problems.get(0);
    assertThat(problem.kind()).isEqualTo(Kind.NOT_A_RULE);
    assertThat(problem.place().map(Place::line)).contains(line);
    assertThat(problem.found()).startsWith(found).doesNotContain("Exception", "[ERR", "Rule_");
    assertThat(problem.source().name()).endsWith("house.drl");
  }

  @Test
  void aMistypedCaseOrPartIsToldWithTheNearest() throws IOException {
    assertThat(problems(example().replace(": RelayGap(", ": RelayGapp(")).get(0).nearest())
        .isEqualTo("RelayGap");
    Problem part = problems(example().replace("draw_kW.plus", "drawn_kW.plus")).get(0);
    assertThat(part.nearest()).isEqualTo("draw_kW");
    assertThat(part.right()).isEqualTo("what RelayGap holds: width_kW, draw_kW");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "@consequence(\"query\") | @consequence(\"qerry\") | hazard, damage, waste, query, record",
        "@consequence(\"query\") | | hazard, damage, waste, query, record",
        "@title(\"Start and stop are closer than we leave them\") | | @title",
        "@why(\"Homes with less than half a kilowatt to spare were called back.\") | | @why",
        "\"gap-below-our-margin\" | \"gap-below-heat-pump-draw\" | a name of its own",
        "\"gap-below-our-margin\" | \"Our margin\" | small letters",
        "package house; | package deadband.judging.rules.thresholds; | a package of your own",
      })
  void whatIsNoHouseRuleIsToldAtItsName(String right, String wrong, String should)
      throws IOException {
    String drl = example().replace(right, wrong == null ? "" : wrong);
    List<Problem> problems = problems(drl);
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).kind()).isEqualTo(Kind.RULE_UNFIT);
    assertThat(problems.get(0).right()).contains(should);
    assertThat(problems.get(0).place().map(Place::line)).contains(9);
  }

  @Test
  void aMistypedConsequenceIsToldWithTheNearest() throws IOException {
    assertThat(problems(example().replace("(\"query\")", "(\"qeury\")")).get(0).nearest())
        .isEqualTo("query");
  }

  @Test
  void aRuleLooksAtACase() throws IOException {
    String drl =
        example().replace("RelayGap( width_kW.isAtMost( draw_kW.plus( 0.5 ) ) )", "String()");
    assertThat(problems(drl.replace("found( kcontext, $gap );", "")).get(0).right())
        .contains("one case");
  }

  @Test
  void aNameStandsOnceInAllFiles() throws IOException {
    Files.writeString(
        folder.resolve("other.drl"), example().replace("package house;", "package other;"));
    List<Problem> problems = problems(example());
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).found()).contains("a second time");
  }

  @Test
  void aRuleThatFailsWhileItRunsIsNoFaultOfTheProgram() throws IOException {
    RuleBook book =
        book(
            example()
                .replace(
                    "found( kcontext, $gap );",
                    "if (true) { throw new IllegalStateException(\"broken pump\"); }"));
    assertThatExceptionOfType(HouseRuleFailure.class)
        .isThrownBy(() -> judged(book, "faulty/stop-just-under-start.json"))
        .withMessageContaining("broken pump");
  }

  @Test
  void anErrorInARuleIsItsOwnFailureToo() throws IOException {
    RuleBook book =
        book(
            example()
                .replace(
                    "found( kcontext, $gap );",
                    "if (true) { throw new StackOverflowError(\"round and round\"); }"));
    assertThatExceptionOfType(HouseRuleFailure.class)
        .isThrownBy(() -> judged(book, "faulty/stop-just-under-start.json"))
        .withMessage("gap-below-our-margin: java.lang.StackOverflowError: round and round");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "drools.halt();",
        "delete( $gap );",
        "drools.halt(); delete( $gap );",
        "for (Object fact : new java.util.ArrayList<Object>(kcontext.getKieRuntime().getObjects())) {"
            + " kcontext.getKieRuntime().delete(kcontext.getKieRuntime().getFactHandle(fact)); }",
        "kcontext.getKieRuntime().insert("
            + "new deadband.judging.Match(\"no-cloud-delay\", $gap, java.util.List.of($gap)));",
      })
  void noRuleSilencesABuiltInCheckOrFindsInItsName(String deed) throws IOException {
    String wide =
        example()
            .replace("\nwhen\n", "\n    salience 1000\nwhen\n")
            .replace(
                "width_kW.isAtMost( draw_kW.plus( 0.5 ) )",
                "width_kW.isAtMost( draw_kW.plus( 99 ) )");
    RuleBook book =
        book(wide.replace("found( kcontext, $gap );", deed + " found( kcontext, $gap );"));
    String sample = "faulty/stop-just-under-start.json";
    List<Finding.Key> builtIn =
        judged(RuleBook.builtIn(), sample).findings().stream().map(Finding::key).toList();
    Judgement with = judged(book, sample);

    assertThat(with.findings().stream().filter(f -> !f.check().isHouse()).map(Finding::key))
        .isEqualTo(builtIn);
    assertThat(with.findings()).anyMatch(finding -> finding.check().isHouse());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "agenda-group \"later\"",
        "activation-group \"one\"",
        "enabled false",
        "date-effective \"1-Jan-2099\"",
        "date-expires \"1-Jan-2001\"",
        "timer (int: 1m)",
        "lock-on-active true",
      })
  void aRuleThatMayNotFireIsRefusedSinceItWouldReadAsClear(String attribute) throws IOException {
    String drl = example().replace("\nwhen\n", "\n    " + attribute + "\nwhen\n");

    assertThat(problems(drl))
        .extracting(Problem::found)
        .containsExactly("an attribute that may keep it from firing");
  }

  @Test
  void aRuleThatFeedsItselfComesToAnEnd() throws IOException {
    RuleBook book =
        book(
            example()
                .replace(
                    "found( kcontext, $gap );",
                    "insert( new deadband.topics.thresholds.RelayGap("
                        + "$gap.evidence(), $gap.width_kW(), $gap.draw_kW()) );"));
    assertThatExceptionOfType(HouseRuleFailure.class)
        .isThrownBy(() -> judged(book, "faulty/stop-just-under-start.json"))
        .withMessageContaining("without end");
  }

  @Test
  void onlyAPlainFileOfSensibleSizeIsCompiled() throws IOException {
    Path odd = folder.resolve("odd.drl");
    Files.createDirectory(odd);
    assertThat(only(HouseRules.in(folder)).kind()).isEqualTo(Kind.NOT_A_FILE);
    Files.delete(odd);
    Files.writeString(odd, "//" + "x".repeat(HouseRules.MOST_BYTES));
    assertThat(only(HouseRules.in(folder)).kind()).isEqualTo(Kind.TOO_LARGE);
    Files.delete(odd);
    if (Files.exists(Path.of("/dev/zero"))) {
      Files.createSymbolicLink(odd, Path.of("/dev/zero"));
      assertThat(only(HouseRules.in(folder)).kind()).isEqualTo(Kind.NOT_A_FILE);
      Files.delete(odd);
    }
  }

  @Test
  void compilingHasATimeLimit() throws IOException {
    Files.writeString(folder.resolve("house.drl"), example());
    assertThat(only(HouseRules.in(folder, Duration.ZERO)).kind()).isEqualTo(Kind.RULES_TOO_SLOW);
  }

  @Test
  void aFolderThatHoldsNoRulesIsTold() throws IOException {
    assertThat(only(HouseRules.in(folder)).kind()).isEqualTo(Kind.EMPTY);
    assertThat(only(HouseRules.in(folder.resolve("none"))).kind()).isEqualTo(Kind.NO_SUCH_FILE);
    Files.write(folder.resolve("latin.drl"), "// Süden".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(only(HouseRules.in(folder)).kind()).isEqualTo(Kind.NOT_UTF8);
  }

  private static Problem only(HouseRules house) {
    List<Problem> problems = ((HouseRules.Unreadable) house).problems();
    assertThat(problems).hasSize(1);
    return problems.get(0);
  }
}
