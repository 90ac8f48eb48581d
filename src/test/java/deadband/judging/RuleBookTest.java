package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.facts.Says;
import deadband.limits.Limit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What keeps the rule book whole, whatever checks it holds. */
class RuleBookTest {

  private static final Pattern NEGATES =
      Pattern.compile("\\b(not|exists|accumulate|eval|forall)\\b *\\(|^ *or\\b|!|== *(true|false)");

  private static final Pattern NUMBER = Pattern.compile("([-−]?\\d+(?:\\.\\d+)?)( ?%|)");

  private static final List<String> HEADINGS =
      List.of(
          "What it looks at",
          "Why it matters",
          "In numbers",
          "Example days",
          "Limits",
          "Cure",
          "What it misses",
          "Fires",
          "Stays silent",
          "Does not apply",
          "At the edge",
          "Not judged");

  static Stream<Check> checks() {
    return Setups.JUDGE.book().checks().stream();
  }

  private static Path page(Check check) {
    return Path.of("rules", check.topic(), check.name() + ".md");
  }

  @ParameterizedTest
  @MethodSource("checks")
  void everyRuleHasItsPage(Check check) {
    assertThat(page(check)).exists();
    assertThat(Setups.text(page(check))).startsWith("# " + check.name() + "\n");
  }

  @Test
  void everyPageHasItsRule() {
    assertThat(Setups.pages())
        .containsExactlyInAnyOrderElementsOf(checks().map(RuleBookTest::page).toList());
  }

  @ParameterizedTest
  @MethodSource("checks")
  void headingsStandInOrder(Check check) {
    List<String> headings = new ArrayList<>(RulePage.of(check).sections().keySet());
    headings.remove("");

    assertThat(HEADINGS).containsAll(headings).containsSubsequence(headings);
    assertThat(headings)
        .contains(
            "What it looks at",
            "Why it matters",
            "Limits",
            "Cure",
            "What it misses",
            "Fires",
            "Stays silent",
            "Not judged");
  }

  /** What is not fitted is a case of its own, beside those on which a check stays silent. */
  @ParameterizedTest
  @MethodSource("checks")
  void whatMustBeFittedStandsUnderDoesNotApply(Check check) {
    boolean fitted =
        check.conditions().stream().anyMatch(fact -> fact.getSimpleName().endsWith("Fitted"));

    assertThat(RulePage.of(check).sections().containsKey("Does not apply") || !fitted).isTrue();
  }

  @ParameterizedTest
  @MethodSource("checks")
  void theLimitsOfThePageAreThoseOfTheRuleBook(Check check) {
    for (String row : RulePage.of(check).sections().get("Limits").split("\n", 0)) {
      String[] cells = row.split(" *\\| *", -1);
      Limit.named(cells.length > 2 ? cells[1] : "")
          .ifPresent(
              limit -> assertThat(numbers(cells[2])).as(row).startsWith(limit.entry().value()));
    }
  }

  /** The numbers of a cell; a share as such, whether it is written in percent or not. */
  private static List<Double> numbers(String cell) {
    return NUMBER
        .matcher(cell)
        .results()
        .map(
            each ->
                Double.parseDouble(each.group(1).replace('−', '-'))
                    / (each.group(2).isEmpty() ? 1 : 100))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("checks")
  void theHeadlineIsOneShortSentence(Check check) {
    RulePage page = RulePage.of(check);

    assertThat(page.says()).isNotBlank().hasSizeLessThanOrEqualTo(76).doesNotContain("\n");
    assertThat(page.why()).isNotBlank().hasSizeLessThanOrEqualTo(240);
    assertThat(page.sections().get("What it misses")).isNotBlank();
  }

  @ParameterizedTest
  @MethodSource("checks")
  void everyEdgeHasBothSides(Check check) {
    String edge = RulePage.of(check).sections().getOrDefault("At the edge", "");
    if (!edge.isEmpty()) {
      assertThat(edge).containsPattern("\\| *fires *\\|").containsPattern("\\| *clear *\\|");
    }
  }

  @ParameterizedTest
  @MethodSource("checks")
  void causesAreChecksThatExist(Check check) {
    assertThat(check.causes())
        .allSatisfy(cause -> assertThat(Setups.JUDGE.book().find(cause)).isPresent());
  }

  @Test
  void aNameLasts() {
    List<String> names = new ArrayList<>();
    checks().forEach(check -> names.add(check.name()));
    checks().forEach(check -> names.addAll(check.formerNames()));

    assertThat(names).doesNotHaveDuplicates();
    assertThat(Setups.JUDGE.book().find("too-rare"))
        .isEqualTo(Setups.JUDGE.book().find("disinfection-too-rare"))
        .isPresent();
  }

  @Test
  void theFiveThatTheUserAskedForAreEssential() {
    assertThat(checks().filter(Check::essential).map(Check::name))
        .contains(
            "stop-not-below-start",
            "start-below-heat-pump-draw",
            "stop-lets-grid-in",
            "limit-below-disinfection",
            "peak-above-blending-limit",
            "backup-joins-on-surplus",
            "clearance-too-small");
  }

  @Test
  void everyFactThatARuleJoinsSaysWhatItIs() {
    assertThat(RuleBook.builtIn().checks().stream().flatMap(check -> check.conditions().stream()))
        .allSatisfy(
            fact ->
                assertThat(fact.getAnnotation(Says.class))
                    .as(fact.getSimpleName())
                    .isNotNull()
                    .extracting(Says::value)
                    .asString()
                    .endsWith("."));
  }

  /** A case whose derivation nobody calls would leave its check silent for ever. */
  @Test
  void everyDerivationIsCalled() {
    List<Path> topics = Setups.files("src/main/java/deadband/topics", ".java");
    String code = topics.stream().map(Setups::text).collect(Collectors.joining());

    assertThat(topics)
        .filteredOn(file -> Setups.text(file).contains("public static void derive("))
        .extracting(file -> file.getFileName().toString().replace(".java", ""))
        .allMatch(name -> code.contains(name + "::derive") || code.contains(name + ".derive("));
  }

  /** What holds surely must hold at best, and what holds at best without defaults too. */
  @Test
  void noRuleNegatesWhatItReads() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("rules"))) {
      for (Path file : files.filter(each -> each.toString().endsWith(".drl")).toList()) {
        assertThat(Files.readString(file).lines().filter(line -> !line.startsWith("//")))
            .as(file.toString())
            .noneMatch(NEGATES.asPredicate());
      }
    }
  }
}
