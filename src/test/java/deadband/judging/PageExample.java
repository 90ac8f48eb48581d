package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;

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
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A setup that a page shows, and what its check must come to on it.
 *
 * @param section heading under which it stands
 * @param row the row of a table, or the number of the setup
 * @param outcomes the ones that the page allows
 * @param findings how many there must be; 0 where the page does not say
 * @param missing pointers that the check must lack
 */
record PageExample(
    String section,
    String row,
    String setup,
    Set<String> outcomes,
    long findings,
    List<Pointer> missing) {

  static final String FIRES = "Fires";
  static final String SILENT = "Stays silent";
  static final String UNCONCERNED = "Does not apply";
  static final String EDGE = "At the edge";
  static final String OPEN = "Not judged";

  private static final Set<String> CLEAR = Set.of("clear", "clear on an assumption");
  private static final Set<String> QUIET = Set.of("clear", "clear on an assumption", "not fitted");

  private static final Pattern BLOCK =
      Pattern.compile("^```(jsonc|json)\\n(.*?)^```", Pattern.MULTILINE | Pattern.DOTALL);

  /** What a check came to. */
  record Outcome(String word, long findings, List<Pointer> missing) {

    static Outcome of(Judgement judgement, String check) {
      long found =
          judgement.findings().stream().filter(f -> f.check().name().equals(check)).count();
      if (found > 0) {
        return new Outcome("fires", found, List.of());
      }
      for (NotJudged open : judgement.notJudged()) {
        if (open.check().name().equals(check)) {
          return new Outcome("not judged", 0, open.missing());
        }
      }
      if (judgement.notFitted().stream().anyMatch(c -> c.name().equals(check))) {
        return new Outcome("not fitted", 0, List.of());
      }
      boolean clear = judgement.clear().stream().anyMatch(c -> c.name().equals(check));
      return new Outcome(clear ? "clear" : "clear on an assumption", 0, List.of());
    }
  }

  boolean allows(Outcome outcome) {
    return outcomes.contains(outcome.word())
        && (findings == 0 || findings == outcome.findings())
        && outcome.missing().containsAll(missing);
  }

  /** Every setup of a page, section by section. */
  static List<PageExample> of(Path file) {
    RulePage page = RulePage.parse(Setups.text(file));
    List<PageExample> examples = new ArrayList<>();
    List<String> findings = beside(page, FIRES);
    numbered(page, FIRES, Set.of("fires"))
        .map(setup -> setup.finding(findings.get(setup.number() - 1)))
        .forEach(examples::add);
    numbered(page, SILENT, CLEAR).map(PageExample::orNotFitted).forEach(examples::add);
    numbered(page, UNCONCERNED, QUIET).map(PageExample::orNotFitted).forEach(examples::add);
    examples.addAll(edges(page));
    List<String> missing = beside(page, OPEN);
    numbered(page, OPEN, Set.of("not judged"))
        .map(setup -> setup.lacking(missing.get(setup.number() - 1)))
        .forEach(examples::add);
    return examples;
  }

  private static Stream<PageExample> numbered(RulePage page, String section, Set<String> outcomes) {
    List<String> setups = blocks(page, section, "jsonc");
    return IntStream.range(0, setups.size())
        .mapToObj(
            i ->
                new PageExample(
                    section, String.valueOf(i + 1), setups.get(i), outcomes, 0, List.of()));
  }

  private int number() {
    return Integer.parseInt(row);
  }

  /** One finding, or a list of them. */
  private PageExample finding(String json) {
    int times = Fragment.parse(json) instanceof Node.Sequence list ? list.items().size() : 1;
    return new PageExample(section, row, setup, outcomes, times, missing);
  }

  private PageExample orNotFitted() {
    return setup.startsWith("// Not fitted:")
        ? new PageExample(section, row, setup, Set.of("not fitted"), 0, missing)
        : this;
  }

  private PageExample lacking(String json) {
    Node wanted = ((Node.Section) Fragment.parse(json)).get("missing").orElseThrow();
    List<Pointer> pointers =
        ((Node.Sequence) wanted)
            .items().stream().map(item -> Pointer.parse(((Node.Text) item).value())).toList();
    return new PageExample(section, row, setup, outcomes, 0, pointers);
  }

  /** What a section says of each of its setups. */
  static List<String> beside(RulePage page, String section) {
    List<String> said = blocks(page, section, "json");
    assertThat(said).as(section).hasSameSizeAs(blocks(page, section, "jsonc"));
    return said;
  }

  private static List<String> blocks(RulePage page, String section, String kind) {
    return BLOCK
        .matcher(page.sections().getOrDefault(section, ""))
        .results()
        .filter(block -> block.group(1).equals(kind))
        .map(block -> block.group(2))
        .toList();
  }

  // The first setup that fires, with the values of a row -----------------------------------------

  private static List<PageExample> edges(RulePage page) {
    List<List<String>> rows =
        page.sections()
            .getOrDefault(EDGE, "")
            .lines()
            .filter(line -> line.startsWith("|"))
            .map(PageExample::cells)
            .toList();
    String setup = blocks(page, FIRES, "jsonc").get(0);
    return rows.stream().skip(2).map(row -> edge(setup, rows.get(0), row)).toList();
  }

  private static List<String> cells(String line) {
    String inner = line.strip().replaceAll("^\\||\\|$", "");
    return Arrays.stream(inner.split("(?<!\\\\)\\|", -1))
        .map(cell -> cell.strip().replace("`", ""))
        .toList();
  }

  private static PageExample edge(String setup, List<String> names, List<String> values) {
    String changed = setup;
    for (int i = 0; i < names.size() - 1; i++) {
      changed = changed(changed, Pointer.ofDotted(names.get(i)), values.get(i));
    }
    String outcome = values.get(values.size() - 1);
    return new PageExample(
        EDGE,
        String.join(" | ", values),
        changed,
        outcome.equals("clear") ? CLEAR : Set.of(outcome),
        0,
        List.of());
  }

  private static String changed(String setup, Pointer pointer, String value) {
    SetupReading.Read read = Setups.read("row", setup);
    Document document = read.document();
    if (value.equals("not entered")) {
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
