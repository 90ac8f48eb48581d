package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import deadband.days.DayEvidence;
import deadband.days.DayRuns;
import deadband.document.Document;
import deadband.document.Edit;
import deadband.document.Literal;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.facts.Detail;
import deadband.reading.JsonReading;
import deadband.reading.SetupReading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A page of the rule book is a test: every block and every row of it is run. */
class RulePageTest {

  private static final Pattern BLOCK =
      Pattern.compile("^```(jsonc|json)\\n(.*?)^```", Pattern.MULTILINE | Pattern.DOTALL);

  private static final Pattern QUANTITY = Pattern.compile("\\{([^}]+)}");

  @TestFactory
  Stream<DynamicContainer> everyPageHolds() {
    return Setups.pages().stream().map(page -> dynamicContainer(name(page), tests(page)));
  }

  private static String name(Path page) {
    return page.getFileName().toString().replace(".md", "");
  }

  private static List<DynamicNode> tests(Path file) {
    RulePage page = RulePage.parse(Setups.text(file));
    String check = name(file);
    List<DynamicNode> tests = new ArrayList<>();
    tests.add(dynamicContainer("fires", fires(check, page)));
    tests.add(dynamicContainer("stays silent", silent(check, page)));
    tests.add(dynamicContainer("does not apply", unconcerned(check, page)));
    tests.add(dynamicContainer("at the edge", edges(check, page)));
    tests.add(dynamicContainer("not judged", notJudged(check, page)));
    return tests;
  }

  private static List<String> blocks(RulePage page, String section, String kind) {
    return BLOCK
        .matcher(page.sections().getOrDefault(section, ""))
        .results()
        .filter(block -> block.group(1).equals(kind))
        .map(block -> block.group(2))
        .toList();
  }

  private static Stream<DynamicTest> fires(String check, RulePage page) {
    List<String> setups = blocks(page, "Fires", "jsonc");
    List<String> findings = blocks(page, "Fires", "json");
    assertThat(findings).as("a finding for every setup that fires").hasSameSizeAs(setups);
    assertThat(setups).as("a setup that fires").isNotEmpty();
    List<DynamicTest> tests = new ArrayList<>();
    for (int i = 0; i < setups.size(); i++) {
      String setup = setups.get(i);
      String finding = findings.get(i);
      tests.add(dynamicTest("setup " + (i + 1), () -> assertFires(check, setup, finding)));
    }
    tests.add(dynamicTest("in numbers", () -> assertNumbers(check, page, setups)));
    return tests.stream();
  }

  private static void assertFires(String check, String setup, String expected) {
    String report = Setups.json(Setups.read(check, setup));
    Node.Section root = (Node.Section) Fragment.parse(report);
    List<Node> found =
        ((Node.Sequence) root.get("findings").orElseThrow())
            .items().stream()
                .filter(
                    item -> Fragment.isIn(Fragment.parse("{\"check\":\"" + check + "\"}"), item))
                .toList();
    Node fragment = Fragment.parse(expected);
    assertThat(found)
        .as("a finding that holds %s, in %s", expected, report)
        .anyMatch(finding -> Fragment.isIn(fragment, finding));
  }

  /**
   * Every clause of the sentence is one that the finding of at least one setup fills: a quantity
   * that no finding has would never be printed.
   */
  private static void assertNumbers(String check, RulePage page, List<String> setups) {
    List<String> clauses = new ArrayList<>(List.of(page.inNumbers().split("; ", -1)));
    clauses.removeIf(clause -> named(clause).isEmpty());
    for (int i = 0; i < setups.size() && !clauses.isEmpty(); i++) {
      Setups.judge(setups.get(i)).findings().stream()
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
    DayRuns runs = DayRuns.remembered();
    for (Path sample : Setups.files("sample-configs", ".json")) {
      if (quoted.isEmpty()) {
        break;
      }
      DayEvidence.days(Setups.read("sample", Setups.text(sample)).setup(), runs).stream()
          .flatMap(days -> DayEvidence.of(days).stream())
          .forEach(measure -> quoted.remove(measure.quantity()));
    }
    assertThat(quoted).as("quantities of \"A day\" that no day shows").isEmpty();
  }

  private static Stream<DynamicTest> silent(String check, RulePage page) {
    List<String> setups = blocks(page, "Stays silent", "jsonc");
    assertThat(setups).as("a setup on which %s stays silent", check).isNotEmpty();
    return setups.stream().map(setup -> dynamicTest("setup", () -> assertClear(check, setup)));
  }

  private static void assertClear(String check, String setup) {
    if (setup.startsWith("// Not fitted:")) {
      assertThat(outcome(check, setup)).as(setup).isEqualTo("not fitted");
      return;
    }
    assertThat(outcome(check, setup)).as(setup).isIn("clear", "clear on an assumption");
  }

  /**
   * One condition of the rule does not hold: the check is clear, or of a thing that is not there.
   */
  private static Stream<DynamicTest> unconcerned(String check, RulePage page) {
    return blocks(page, "Does not apply", "jsonc").stream()
        .map(
            setup ->
                dynamicTest(
                    "setup",
                    () ->
                        assertThat(outcome(check, setup))
                            .as(setup)
                            .isIn("clear", "clear on an assumption", "not fitted")));
  }

  private static String outcome(String check, String setup) {
    Judgement judgement = Setups.judge(setup);
    if (judgement.findings().stream().anyMatch(f -> f.check().name().equals(check))) {
      return "fires";
    }
    for (NotJudged open : judgement.notJudged()) {
      if (open.check().name().equals(check)) {
        return "not judged for want of " + open.missing();
      }
    }
    if (judgement.notFitted().stream().anyMatch(c -> c.name().equals(check))) {
      return "not fitted";
    }
    return judgement.clear().stream().anyMatch(c -> c.name().equals(check))
        ? "clear"
        : "clear on an assumption";
  }

  private static Stream<DynamicTest> notJudged(String check, RulePage page) {
    List<String> setups = blocks(page, "Not judged", "jsonc");
    List<String> expected = blocks(page, "Not judged", "json");
    assertThat(expected).hasSameSizeAs(setups);
    if (setups.isEmpty()) {
      return Stream.of(dynamicTest("never", () -> assertNeverOpen(check, page)));
    }
    List<DynamicTest> tests = new ArrayList<>();
    for (int i = 0; i < setups.size(); i++) {
      String setup = setups.get(i);
      String missing = expected.get(i);
      tests.add(dynamicTest("setup " + (i + 1), () -> assertOpen(check, setup, missing)));
    }
    return tests.stream();
  }

  /** A page without an example says that nothing can keep its check from being judged. */
  private static void assertNeverOpen(String check, RulePage page) {
    assertThat(page.sections().getOrDefault("Not judged", "")).startsWith("Never: ");
    assertThat(outcome(check, "{}")).doesNotStartWith("not judged");
  }

  private static void assertOpen(String check, String setup, String expected) {
    Node.Section root = (Node.Section) Fragment.parse(Setups.json(Setups.read(check, setup)));
    Node.Section named = (Node.Section) Fragment.parse("{\"check\":\"" + check + "\"}");
    Node missing = ((Node.Section) Fragment.parse(expected)).get("missing").orElseThrow();
    assertThat(((Node.Sequence) root.get("notJudged").orElseThrow()).items())
        .anyMatch(
            open ->
                Fragment.isIn(named, open)
                    && Fragment.isIn(missing, ((Node.Section) open).get("missing").orElseThrow()));
  }

  private static Stream<DynamicTest> edges(String check, RulePage page) {
    List<List<String>> rows =
        page.sections()
            .getOrDefault("At the edge", "")
            .lines()
            .filter(line -> line.startsWith("|"))
            .map(RulePageTest::cells)
            .toList();
    if (rows.size() < 3) {
      return Stream.empty();
    }
    String setup = blocks(page, "Fires", "jsonc").get(0);
    return rows.stream()
        .skip(2)
        .map(
            row ->
                dynamicTest(
                    String.join(" | ", row), () -> assertRow(check, setup, rows.get(0), row)));
  }

  private static List<String> cells(String line) {
    String inner = line.strip().replaceAll("^\\||\\|$", "");
    return Arrays.stream(inner.split("(?<!\\\\)\\|", -1))
        .map(cell -> cell.strip().replace("`", ""))
        .toList();
  }

  private static void assertRow(
      String check, String setup, List<String> names, List<String> values) {
    String changed = setup;
    for (int i = 0; i < names.size() - 1; i++) {
      changed = changed(changed, Pointer.ofDotted(names.get(i)), values.get(i));
    }
    assertThat(outcome(check, changed).replace("clear on an assumption", "clear"))
        .as(changed)
        .isEqualTo(values.get(values.size() - 1));
  }

  private static String changed(String setup, Pointer pointer, String value) {
    SetupReading.Read read = Setups.read("row", setup);
    Document document = read.document();
    if (value.equals("not told")) {
      return document.find(pointer).isPresent() ? document.without(pointer) : setup;
    }
    return Edit.set(document, pointer, literal(value)).apply(document);
  }

  private static Literal literal(String value) {
    JsonReading reading = JsonReading.ofText("cell", "{ \"value\": " + value + " }");
    return reading instanceof JsonReading.Read read && read.problems().isEmpty()
        ? Literal.of(read.document().root().get("value").orElseThrow())
        : Literal.of(value);
  }
}
