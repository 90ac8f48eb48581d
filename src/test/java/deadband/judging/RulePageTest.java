package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import deadband.days.DayEvidence;
import deadband.document.Node;
import deadband.facts.Detail;
import deadband.reading.SetupReading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.function.Executable;

/** A page of the rule book is a test: every block and every row of it is run. */
class RulePageTest {

  private static final Pattern QUANTITY = Pattern.compile("\\{([^}]+)}");

  @TestFactory
  Stream<DynamicContainer> everyPageHolds() {
    return Setups.pages().stream().map(page -> dynamicContainer(name(page), tests(page)));
  }

  private static String name(Path page) {
    return page.getFileName().toString().replace(".md", "");
  }

  private static Stream<DynamicTest> tests(Path file) {
    String check = name(file);
    RulePage page = RulePage.parse(Setups.text(file));
    Map<String, List<PageExample>> examples =
        PageExample.of(file).stream().collect(Collectors.groupingBy(PageExample::section));
    return Stream.of(
            fires(check, page, examples.get(PageExample.FIRES)),
            silent(check, examples.get(PageExample.SILENT)),
            outcomes(check, examples.getOrDefault(PageExample.UNCONCERNED, List.of())),
            outcomes(check, examples.getOrDefault(PageExample.EDGE, List.of())),
            notJudged(check, page, examples.getOrDefault(PageExample.OPEN, List.of())))
        .flatMap(tests -> tests);
  }

  private static Stream<DynamicTest> fires(
      String check, RulePage page, List<PageExample> examples) {
    List<String> findings = PageExample.beside(page, PageExample.FIRES);
    List<DynamicTest> tests = new ArrayList<>();
    for (int i = 0; i < examples.size(); i++) {
      PageExample example = examples.get(i);
      String wanted = findings.get(i);
      tests.add(test(example, () -> assertFires(check, example, wanted)));
    }
    tests.add(dynamicTest("in numbers", () -> assertNumbers(check, page, examples)));
    return tests.stream();
  }

  private static void assertFires(String check, PageExample example, String wanted) {
    SetupReading.Read read = Setups.read(check, example.setup());
    Judgement judgement = Setups.judge(read);
    assertOutcome(check, example, judgement);
    Node.Section report = (Node.Section) Fragment.parse(Setups.json(read, judgement));
    Node fragment = Fragment.parse(wanted);
    List<Node> found = found(check, report).toList();
    for (Node finding : fragment instanceof Node.Sequence list ? list.items() : List.of(fragment)) {
      assertThat(nearest(finding, found)).as("%s fires: %s", check, example.row()).isEmpty();
    }
  }

  /** What the finding most like it lacks. */
  private static List<String> nearest(Node wanted, List<Node> found) {
    return found.stream()
        .map(each -> Fragment.missing(wanted, each))
        .min(Comparator.comparingInt(List::size))
        .orElse(List.of("nothing was found"));
  }

  private static Stream<Node> found(String check, Node.Section report) {
    Node ofCheck = Fragment.parse("{\"check\":\"" + check + "\"}");
    return ((Node.Sequence) report.get("findings").orElseThrow())
        .items().stream().filter(finding -> Fragment.isIn(ofCheck, finding));
  }

  /**
   * Every clause of the sentence is one that the finding of at least one setup fills: a quantity
   * that no finding has would never be printed.
   */
  private static void assertNumbers(String check, RulePage page, List<PageExample> examples) {
    List<String> clauses = new ArrayList<>(List.of(page.inNumbers().split("; ", -1)));
    clauses.removeIf(clause -> named(clause).isEmpty());
    for (int i = 0; i < examples.size() && !clauses.isEmpty(); i++) {
      Setups.glance(Setups.read(check, examples.get(i).setup())).findings().stream()
          .filter(finding -> finding.check().name().equals(check))
          .map(RulePageTest::quantities)
          .forEach(known -> clauses.removeIf(clause -> known.containsAll(named(clause))));
    }
    assertThat(clauses).as("clauses that no finding under \"Fires\" fills").isEmpty();
  }

  private static Set<String> named(String clause) {
    return QUANTITY
        .matcher(clause)
        .results()
        .map(quantity -> quantity.group(1))
        .collect(Collectors.toSet());
  }

  private static Set<String> quantities(Finding finding) {
    Detail detail = finding.detail();
    Set<String> known = new HashSet<>();
    detail.evidence().forEach(measure -> known.add(measure.quantity()));
    Optional.ofNullable(detail.observed()).ifPresent(measure -> known.add(measure.quantity()));
    Optional.ofNullable(detail.limit()).ifPresent(limit -> known.add(limit.measure().quantity()));
    return known;
  }

  /** Every quantity that a page quotes of the days is one that the days of some sample show. */
  @Test
  void daysShowWhatPagesQuote() {
    Set<String> quoted = new TreeSet<>();
    Setups.pages().forEach(page -> quoted.addAll(RulePage.parse(Setups.text(page)).quotedOfDays()));
    for (Path sample : Setups.files("sample-configs", ".json")) {
      if (quoted.isEmpty()) {
        break;
      }
      DayEvidence.days(Setups.read("sample", Setups.text(sample)).setup(), Setups.RUNS).stream()
          .flatMap(days -> DayEvidence.of(days).stream())
          .forEach(measure -> quoted.remove(measure.quantity()));
    }
    assertThat(quoted).as("quantities of \"A day\" that no day shows").isEmpty();
  }

  private static Stream<DynamicTest> silent(String check, List<PageExample> examples) {
    assertThat(examples).as("a setup on which %s stays silent", check).isNotEmpty();
    return outcomes(check, examples);
  }

  private static Stream<DynamicTest> outcomes(String check, List<PageExample> examples) {
    return examples.stream()
        .map(
            example ->
                test(
                    example,
                    () ->
                        assertOutcome(
                            check, example, Setups.glance(Setups.read(check, example.setup())))));
  }

  private static DynamicTest test(PageExample example, Executable assertion) {
    return dynamicTest(example.section() + ": " + example.row(), assertion);
  }

  private static void assertOutcome(String check, PageExample example, Judgement judgement) {
    PageExample.Outcome outcome = PageExample.Outcome.of(judgement, check);
    assertThat(example.allows(outcome)).as("%s: %s", outcome, example).isTrue();
  }

  private static Stream<DynamicTest> notJudged(
      String check, RulePage page, List<PageExample> examples) {
    return examples.isEmpty()
        ? Stream.of(dynamicTest("never open", () -> assertNeverOpen(check, page)))
        : outcomes(check, examples);
  }

  /** A page without an example says that nothing can keep its check from being judged. */
  private static void assertNeverOpen(String check, RulePage page) {
    assertThat(page.sections().getOrDefault("Not judged", "")).startsWith("Never: ");
    Judgement judgement = Setups.glance(Setups.read(check, "{}"));
    assertThat(PageExample.Outcome.of(judgement, check).word()).isNotEqualTo("not judged");
  }
}
