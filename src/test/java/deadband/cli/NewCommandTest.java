package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.document.Document;
import deadband.document.Literal;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.document.Span;
import deadband.judging.Check;
import deadband.judging.Consequence;
import deadband.judging.Setups;
import deadband.reading.SetupReading;
import deadband.setup.DataSheet;
import deadband.setup.Field;
import deadband.setup.FieldKind;
import deadband.setup.Question;
import deadband.setup.Setup;
import deadband.setup.Shape;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A setup filled in by questions, over a pipe. */
class NewCommandTest {

  private static final Node FALSE = new Node.Truth(Span.at(0), false);
  private static final int MOST_ENTRIES = 8;

  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void nameTheFile() {
    file = folder.resolve("home.json");
  }

  private CommandLineRun questions(String... answers) {
    return run(String.join("\n", answers) + "\n", "--questions");
  }

  private CommandLineRun run(String input, String... options) {
    List<String> words = new ArrayList<>(List.of("new", file.toString()));
    words.addAll(List.of(options));
    return CommandLineRun.with(input, Map.of(), words.toArray(String[]::new));
  }

  private Setup saved() {
    return Setups.read(file.toString(), Setups.text(file)).setup();
  }

  @ParameterizedTest
  @ValueSource(strings = {"immersion-only", "heat-pump", "three-phase", "battery"})
  void aTemplateLeavesOutWhatTheHomeDoesNotHave(String home) {
    CommandLineRun run = CommandLineRun.of("new", "--for", home);
    Setup setup = Setups.read("home", run.out()).setup();

    assertThat(setup.heatPump().part().isFitted().says(false))
        .isEqualTo(home.equals("immersion-only"));
    assertThat(setup.battery().part().isFitted().says(false)).isEqualTo(!home.equals("battery"));
    assertThat(setup.vehicleCharger().part().isFitted().isEntered()).isFalse();
    assertThat(setup.tank().part().isFitted().isEntered()).isFalse();
    assertThat(run.out().contains("chargesBefore")).isEqualTo(home.equals("battery"));
  }

  @Test
  void aVerdictFollowsEachTopic() {
    Document known = known("mill-cottage");
    List<String> topics =
        byPointer(at -> List.of(typed(known, at)))
            .out()
            .lines()
            .filter(line -> line.matches("\\S.*:|.*ANSWERS NEEDED"))
            .toList();

    assertThat(topics).hasSizeGreaterThan(15);
    for (int i = 0; i < topics.size(); i++) {
      assertThat(topics.get(i).contains("ANSWERS")).isEqualTo(i % 2 == 0);
    }
  }

  /** The first question is whether a heat pump is fitted; then come those about it. */
  @Test
  void eachAnswerIsSavedAtOnceAndTheEndOfTheInputEndsTheQuestions() {
    CommandLineRun run = questions("yes", "no");

    assertThat(run.exit()).isEqualTo(Exit.READY);
    assertThat(run.out()).contains("To go on: deadband new --continue");
    assertThat(saved().heatPump().part().isFitted().says(true)).isTrue();
    assertThat(saved().heatPump().disinfection().enabled().says(false)).isTrue();
  }

  /** What the data sheets of the firm say is not put as a question. */
  @Test
  void equipmentFilesAreChosenByTheirNumbers() {
    String sheets = "--equipment=sample-configs/equipment";
    String out = run("3 9\n3 2\n4, 3\n", "--questions", sheets).out();

    assertThat(out)
        .contains(
            "2  heat-pumps/air-8kW.json",
            "right: numbers from 1 to 5",
            "heat-pumps/ground-6kW.json gives \"ground\"");
    assertThat(saved().equipment().optional().orElseThrow())
        .extracting(DataSheet::file)
        .containsExactly("tanks/250L-coil.json", "heat-pumps/ground-6kW.json");
    assertThat(run("", "--continue", sheets).out()).doesNotContain("Equipment files:");
    assertThat(run("\nyes\n", "--questions", "--overwrite", sheets).out())
        .contains("Is a heat pump fitted");
    assertThat(saved().equipment().optional().orElseThrow()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "hot | right: a number, °C",
        "60-62 | right: one number: 60 or 62",
        "600 | a number from 20 to 100 °C",
        "60 kW | right: a number, °C",
      })
  void eachAnswerIsCheckedAsItIsTyped(String typed, String right) {
    CommandLineRun run = questions("yes", "yes", "immersion", typed, "61,5 °C");

    assertThat(run.out()).contains("To what temperature does the disinfection heat?", right);
    assertThat(saved().heatPump().disinfection().target_C().says(61.5)).isTrue();
  }

  @Test
  void backOpensTheQuestionBeforeAndKeepsItsAnswerUntilAnotherIsTyped() {
    assertThat(questions("yes", "yes", "immersion", "back", "").out())
        .contains("entered: \"immersion\"");
    assertThat(saved().heatPump().disinfection().heater().optional()).isPresent();

    run("yes\nyes\nimmersion\nback\nheat pump\n", "--questions", "--overwrite");
    assertThat(saved().heatPump().disinfection().heater().optional().orElseThrow().word())
        .isEqualTo("heat pump");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"--continue --for battery", "--template --questions", "--template --continue"})
  void optionsThatContradictEachOtherAreRefused(String options) {
    assertThat(run("", options.split(" ", -1)).exit()).isEqualTo(Exit.USAGE);
  }

  @Test
  void nothingIsOverwrittenUnlessThatIsSaid() throws IOException {
    Files.writeString(file, "{ \"deadband\": 1 } // mine");

    CommandLineRun refused = run("yes\n", "--questions");
    assertThat(refused.exit()).isEqualTo(Exit.USAGE);
    assertThat(refused.err()).contains("--continue goes on with it");
    assertThat(run("", "--template").exit()).isEqualTo(Exit.USAGE);
    assertThat(Setups.text(file)).isEqualTo("{ \"deadband\": 1 } // mine");

    assertThat(run("yes\n", "--continue").exit()).isEqualTo(Exit.READY);
    assertThat(Setups.text(file)).contains("// mine", "\"fitted\": true");
  }

  @Test
  void aSizeFarFromAnyUsualOneIsTypedTwice() {
    Document known = known("mill-cottage");
    CommandLineRun run =
        byPointer(
            at ->
                at.equals(Pointer.parse("/tank/height_mm"))
                    ? List.of("20", "20")
                    : List.of(typed(known, at)));

    assertThat(run.out().replaceAll("\\s+", " ")).contains("if it is right, type it again");
    assertThat(saved().tank().height_mm().says(20.0)).isTrue();
    assertThat(saved().confirmed().optional()).contains(List.of(Pointer.parse("/tank/height_mm")));
  }

  /** Whoever knows everything is not asked for what decides no hazard and no damage. */
  @ParameterizedTest
  @ValueSource(strings = {"mill-cottage", "singel", "fernleigh-bungalow"})
  void aKnownHomeIsAskedUntilNothingGraveIsOpen(String home) {
    Document known = known(home);
    CommandLineRun run = byPointer(at -> List.of(typed(known, at)));

    assertThat(run.exit()).isEqualTo(Exit.READY);
    assertThat(run.out()).contains("next: deadband check").doesNotContain("right:");
    String json = CommandLineRun.of("check", "--format", "jsonl", file.toString()).out();
    assertThat(graveOpen(json)).isEmpty();
    assertThat(json).contains("\"findings\":[]");
  }

  private static Document known(String home) {
    Path sample = Path.of("sample-configs/good", home + ".json");
    return ((SetupReading.Read) SetupReading.ofFile(sample)).document();
  }

  private static List<String> graveOpen(String json) {
    return Setups.JUDGE.book().checks().stream()
        .filter(check -> check.consequence().compareTo(Consequence.DAMAGE) <= 0)
        .map(Check::name)
        .filter(name -> json.contains("{\"check\":\"" + name + "\",\"missing\""))
        .toList();
  }

  /** What stands in a file, as somebody would type it. */
  private static String typed(Document known, Pointer at) {
    Node node = known.find(at).orElse(null);
    if (node instanceof Node.Section section) {
      boolean absent = section.get("fitted").filter(FALSE::same).isPresent();
      return absent ? "no" : "yes";
    }
    if (node instanceof Node.Sequence list) {
      return list.items().stream()
          .map(item -> item instanceof Node.Section entry ? entry.members().get(0).value() : item)
          .map(NewCommandTest::plain)
          .reduce((one, other) -> one + ", " + other)
          .orElse("none");
    }
    return node == null ? "?" : plain(node);
  }

  private static String plain(Node node) {
    if (node instanceof Node.Text text) {
      return text.value();
    }
    return node instanceof Node.Truth truth
        ? (truth.value() ? "yes" : "no")
        : Literal.of(node).json();
  }

  /** Answers each question as it is put. */
  private CommandLineRun byPointer(Function<Pointer, List<String>> answers) {
    Map<String, Pointer> places = questions();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    InputStream in =
        new InputStream() {
          private byte[] line = new byte[0];
          private int at;
          private int seen;

          @Override
          public int read() {
            if (at == line.length) {
              line = next().getBytes(StandardCharsets.UTF_8);
              at = 0;
            }
            return line[at++];
          }

          @Override
          public int read(byte[] bytes, int from, int length) {
            bytes[from] = (byte) read();
            return 1;
          }

          private String next() {
            String text = out.toString(StandardCharsets.UTF_8);
            String now =
                text.substring(seen)
                    .replaceAll("\\s+", " ")
                    .replaceAll("(entry \\d+): [^)]*", "$1");
            seen = text.length();
            return places.entrySet().stream()
                .filter(place -> now.contains(place.getKey()))
                .map(place -> String.join("\n", answers.apply(place.getValue())) + "\n")
                .findFirst()
                .orElse("quit\n");
          }
        };
    Console console = Console.of(in, out, new ByteArrayOutputStream(), Map.of());
    int exit = Program.of(console).run("new", file.toString(), "--questions");
    return new CommandLineRun(exit, out.toString(StandardCharsets.UTF_8), "");
  }

  /** Every question with its place, the longest first. */
  private static Map<String, Pointer> questions() {
    Map<String, Pointer> places =
        new TreeMap<>(
            Comparator.comparingInt((String asks) -> -asks.length())
                .thenComparing(Comparator.naturalOrder()));
    within(Shape.of(Setup.class), Pointer.root(), places);
    return places;
  }

  private static void within(Shape shape, Pointer at, Map<String, Pointer> places) {
    for (Field field : shape.fields()) {
      Pointer place = at.child(field.name());
      Question.about(place).ifPresent(question -> places.put(question.asks(), place));
      if (field.kind() instanceof FieldKind.Section section && section.type() != Setup.class) {
        within(section.shape(), place, places);
      } else if (field.kind() instanceof FieldKind.Many many
          && many.of() instanceof FieldKind.Section section) {
        for (int i = 0; i < MOST_ENTRIES; i++) {
          within(section.shape(), place.child(i), places);
        }
      }
    }
  }
}
