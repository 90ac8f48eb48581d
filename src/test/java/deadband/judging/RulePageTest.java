package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import deadband.document.Document;
import deadband.document.Edit;
import deadband.document.Literal;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.reading.JsonReading;
import deadband.reading.SetupReading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** A page of the rule book is a test: every block and every row of it is run. */
class RulePageTest {

  private static final Pattern BLOCK =
      Pattern.compile("^```(jsonc|json)\\n(.*?)^```", Pattern.MULTILINE | Pattern.DOTALL);

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
    tests.add(dynamicTest("in numbers", () -> assertNumbers(check, page, setups.get(0))));
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

  /** Every quantity that the sentence names is one that the finding has. */
  private static void assertNumbers(String check, RulePage page, String setup) {
    Finding finding =
        Setups.judge(setup).findings().stream()
            .filter(found -> found.check().name().equals(check))
            .findFirst()
            .orElseThrow();
    List<String> known = new ArrayList<>();
    finding.detail().evidence().forEach(measure -> known.add(measure.quantity()));
    if (finding.detail().observed() != null) {
      known.add(finding.detail().observed().quantity());
    }
    if (finding.detail().limit() != null) {
      known.add(finding.detail().limit().measure().quantity());
    }
    Matcher named = Pattern.compile("\\{([^}]+)}").matcher(page.inNumbers());
    List<String> quantities = named.results().map(quantity -> quantity.group(1)).toList();
    if (quantities.isEmpty()) {
      return;
    }
    assertThat(quantities)
        .as("at least one quantity of \"%s\" is in %s", page.inNumbers(), known)
        .anyMatch(known::contains);
  }

  private static Stream<DynamicTest> silent(String check, RulePage page) {
    List<String> setups = blocks(page, "Stays silent", "jsonc");
    assertThat(setups).as("a setup on which %s stays silent", check).isNotEmpty();
    return setups.stream().map(setup -> dynamicTest("setup", () -> assertClear(check, setup)));
  }

  private static void assertClear(String check, String setup) {
    assertThat(outcome(check, setup)).as(setup).isIn("clear", "clear on an assumption");
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
    List<DynamicTest> tests = new ArrayList<>();
    for (int i = 0; i < setups.size(); i++) {
      String setup = setups.get(i);
      String missing = expected.get(i);
      tests.add(dynamicTest("setup " + (i + 1), () -> assertOpen(check, setup, missing)));
    }
    return tests.stream();
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
