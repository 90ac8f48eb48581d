package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.days.DayRuns;
import deadband.document.Document;
import deadband.document.Literal;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.limits.Limits;
import deadband.reading.SetupReading;
import deadband.setup.Setup;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The samples: silent where they are good, telling their story where they are not. */
class SamplesTest {

  private static final int SHARES = 13;
  private static final Judge QUICK = new Judge(Setups.JUDGE.book(), DayRuns.none());

  static Stream<Path> good() {
    return Setups.good().stream();
  }

  static Stream<Path> faulty() {
    return Setups.files("sample-configs/faulty", ".json").stream();
  }

  static Stream<Path> all() {
    return Stream.concat(good(), faulty());
  }

  private static SetupReading.Read read(Path file) {
    return Setups.read(file.toString(), Setups.text(file));
  }

  @ParameterizedTest
  @MethodSource("good")
  void everyCheckIsSilentOnAGoodSample(Path file) {
    Judgement judgement = Setups.judge(read(file));

    assertThat(judgement.findings()).isEmpty();
    assertThat(judgement.notJudged()).isEmpty();
    assertThat(judgement.verdict()).isEqualTo(Verdict.READY);
  }

  @ParameterizedTest
  @MethodSource("faulty")
  void aFaultySampleTellsItsStoryInOrder(Path file) {
    Path beside = Path.of(file.toString().replace(".json", ".expected"));
    Node.Section expected = (Node.Section) Fragment.parse(Setups.text(beside));
    Node.Section report = (Node.Section) Fragment.parse(Setups.json(read(file)));

    List<Node> stories = items(expected, "findings");
    List<Node> findings = items(report, "findings");
    assertThat(findings).as(summary(findings)).hasSameSizeAs(stories);
    for (int i = 0; i < stories.size(); i++) {
      Node finding = findings.get(i);
      assertThat(Fragment.missing(stories.get(i), finding))
          .as("number %d of %s", i + 1, summary(findings))
          .isEmpty();
    }
    assertThat(
            Fragment.missing(
                expected.get("verdict").orElseThrow(), report.get("verdict").orElseThrow()))
        .isEmpty();
  }

  /** A report is told from the others by its reference. */
  @Test
  void noTwoSamplesShareAReference() {
    Map<String, Path> named = new TreeMap<>();
    List<String> shared = new ArrayList<>();
    all()
        .forEach(
            file -> {
              String reference = read(file).setup().site().reference().optional().orElse("");
              Path other = named.put(reference, file);
              if (other != null) {
                shared.add(reference + ": " + other + ", " + file);
              }
            });

    assertThat(shared).isEmpty();
  }

  @Test
  void everyExpectationHasItsSample() {
    assertThat(Setups.files("sample-configs", ".expected"))
        .allSatisfy(
            file -> assertThat(Path.of(file.toString().replace(".expected", ".json"))).exists());
  }

  /** No check without a home in which it arises, whole and beside whatever else is found there. */
  @Test
  void everyCheckHasAFaultySample() {
    Set<String> without = new TreeSet<>();
    Setups.JUDGE.book().checks().forEach(check -> without.add(check.name()));
    for (Path file : Setups.files("sample-configs/faulty", ".expected")) {
      items((Node.Section) Fragment.parse(Setups.text(file)), "findings")
          .forEach(story -> without.remove(check(story)));
    }
    assertThat(without).isEmpty();
  }

  private static String check(Node finding) {
    return ((Node.Text) ((Node.Section) finding).get("check").orElseThrow()).value();
  }

  private static List<Node> items(Node.Section section, String name) {
    return ((Node.Sequence) section.get(name).orElseThrow()).items();
  }

  private static String summary(List<Node> findings) {
    return findings.stream()
        .map(SamplesTest::check)
        .collect(Collectors.joining(", ", "found: ", ""));
  }

  /** Removing what is entered may leave a check silent or not judged; it never makes a finding. */
  @ParameterizedTest
  @MethodSource("good")
  void aMissingValueNeverMakesAFinding(Path file) {
    Document document = read(file).document();
    for (Pointer pointer : Setups.leaves(document)) {
      assertNothingFound(Setups.JUDGE, document.without(pointer), pointer.toString());
    }
  }

  /**
   * Without day runs, which would take minutes and look at few of these values. The homes tell much
   * the same values, so each tries its share of the pairs.
   */
  @ParameterizedTest
  @MethodSource("good")
  void noPairOfMissingValuesMakesAFinding(Path file) {
    Document document = read(file).document();
    List<Pointer> leaves = Setups.leaves(document);
    int share = Setups.good().indexOf(file) % SHARES;
    IntStream.range(0, leaves.size())
        .parallel()
        .forEach(i -> assertNoPair(document, leaves, i, share));
  }

  private static void assertNoPair(Document document, List<Pointer> leaves, int first, int share) {
    Pointer one = leaves.get(first);
    Document less = Setups.read("less", document.without(one)).document();
    for (int second = first + 1; second < leaves.size(); second++) {
      Pointer other = leaves.get(second);
      if (second % SHARES == share && less.find(other).isPresent()) {
        assertNothingFound(QUICK, less.without(other), one + " and " + other);
      }
    }
  }

  /**
   * Nothing but a question that a documented default raises: a mixing valve of which nothing is
   * told is taken to be made for 65 °C, and a tank above that is asked about.
   */
  private static void assertNothingFound(Judge judge, String text, String removed) {
    Setup setup = Setups.read("less", text).setup();
    assertThat(judge.glance(setup, Limits.standard(), Setups.AS_OF).findings())
        .as("without %s", removed)
        .allMatch(
            finding ->
                finding.consequence() == Consequence.QUERY
                    && !finding.provenance().assumed().isEmpty());
  }

  /** A value that is missing never clears a check that would be found with it. */
  @ParameterizedTest
  @MethodSource("faulty")
  void aMissingValueNeverClearsInSilence(Path file) {
    SetupReading.Read whole = read(file);
    Judgement before = Setups.judge(whole);
    for (Finding finding : before.findings()) {
      if (finding.check().consequence() == Consequence.HAZARD) {
        finding.provenance().entered().stream()
            .filter(pointer -> whole.document().find(pointer).isPresent())
            // A rating that is entered stands in for the size of its conductor.
            .filter(pointer -> !pointer.toString().endsWith("_mm2"))
            .forEach(pointer -> assertNotCleared(whole.document(), finding, pointer));
      }
    }
  }

  private static void assertNotCleared(Document document, Finding finding, Pointer pointer) {
    assertThat(Setups.judge(document.without(pointer)).clear())
        .as("%s without %s", finding.check().name(), pointer)
        .doesNotContain(finding.check());
  }

  @ParameterizedTest
  @MethodSource("all")
  void theOrderOfTheFileNeverChangesTheReport(Path file) {
    SetupReading.Read read = read(file);
    String expected = withoutPlaces(Setups.json(read));
    Random random = new Random(20260531);
    for (int i = 0; i < 2; i++) {
      String shuffled = shuffled(read.document().root(), random);
      assertThat(withoutPlaces(Setups.json(Setups.read(file.toString(), shuffled))))
          .isEqualTo(expected);
    }
  }

  private static String withoutPlaces(String json) {
    return json.replaceAll("\"(line|column)\": ?\\d+", "");
  }

  private static String shuffled(Node node, Random random) {
    if (node instanceof Node.Section section) {
      Map<String, String> members = new TreeMap<>();
      section.members().forEach(m -> members.put(m.name(), shuffled(m.value(), random)));
      List<String> order = new ArrayList<>(members.keySet());
      Collections.shuffle(order, random);
      return order.stream()
          .map(name -> "\"" + name + "\": " + members.get(name))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    if (node instanceof Node.Sequence list) {
      return list.items().stream()
          .map(item -> shuffled(item, random))
          .collect(Collectors.joining(", ", "[", "]"));
    }
    return Literal.of(node).json();
  }
}
