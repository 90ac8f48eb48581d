package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.net.URI;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/** Setups by the thousand: a line each in, a line each out. */
class JsonLinesTest {

  private static final Path GOOD = Path.of("sample-configs/good/mill-cottage.json");
  private static final Path FAULTY = Path.of("sample-configs/faulty/stop-just-under-start.json");
  private static final String[] QUICK = {"check", "--no-day-run", "--format=jsonl", "--jsonl"};

  @TempDir private Path folder;

  /** Homes that differ in their name: a line each. */
  private static Stream<String> homes(int number) throws IOException {
    String one =
        Files.readString(GOOD)
            .replaceAll("(?m)//.*$", "")
            .replaceAll("\\s+", " ")
            .replaceFirst("\"reference\": \"[^\"]*\"", "\"reference\": \"home NUMBER\"");
    assertThat(one).contains("NUMBER");
    return IntStream.rangeClosed(1, number).mapToObj(i -> one.replace("NUMBER", "" + i));
  }

  private static String text(Stream<String> lines) {
    return lines.map(line -> line + "\n").collect(Collectors.joining());
  }

  private static CommandLineRun run(String input, String... more) {
    List<String> words = new ArrayList<>(List.of(QUICK));
    words.addAll(List.of(more));
    return CommandLineRun.with(input, Map.of(), words.toArray(String[]::new));
  }

  private static String reference(String line) {
    return member(line, "reference");
  }

  private static String member(String line, String name) {
    try (JsonParser json = new JsonFactory().createParser(ObjectReadContext.empty(), line)) {
      while (json.nextToken() != null) {
        if (json.currentToken() == JsonToken.PROPERTY_NAME && json.currentName().equals(name)) {
          json.nextToken();
          return json.getString();
        }
      }
      return "";
    }
  }

  /** More than any window holds, of unequal length of work. */
  @Test
  void eachLineIsAnsweredByALineInItsOrderAndNamesIt() throws IOException {
    CommandLineRun run = run(text(homes(300)), "--fail-on=never", "--name=fleet", "-");

    List<String> lines = run.out().lines().toList();
    assertThat(run.exit()).isZero();
    assertThat(lines).hasSize(300);
    for (int i = 1; i <= 300; i++) {
      assertThat(member(lines.get(i - 1), "file")).isEqualTo("fleet:" + i);
      assertThat(reference(lines.get(i - 1))).isEqualTo("home " + i);
    }
  }

  @Test
  void aLineIsJudgedAsAFileIs() throws IOException {
    String home = homes(1).findFirst().orElseThrow();
    Path file = Files.writeString(folder.resolve("home.json"), home);
    String alone = run("", file.toString()).out();

    assertThat(run(home, "-").out().replace("standard input:1", file.toString())).isEqualTo(alone);
  }

  @Test
  void aBadLineSaysWhatIsWrongAndTheOthersAreJudged() throws IOException {
    List<String> homes = homes(2).toList();
    String input = homes.get(0) + "\n{ \"tank\": { \"volume_L\": \"x\" } }\r\n \n" + homes.get(1);

    CommandLineRun run = run(input, "-");

    List<String> lines = run.out().lines().toList();
    assertThat(run.exit()).isEqualTo(3);
    assertThat(lines).hasSize(3);
    assertThat(lines.get(1))
        .contains("\"file\":\"standard input:2\"", "\"problem\":\"wrong-kind\"", "/tank/volume_L");
    assertThat(member(lines.get(2), "file")).isEqualTo("standard input:4");
    assertThat(reference(lines.get(2))).isEqualTo("home 2");
  }

  @Test
  void aLineThatIsTooLongIsRefusedAndTheNextOneRead() throws IOException {
    String input = "{ \"a\": \"" + "x".repeat(5_000_000) + "\" }\n" + text(homes(1));

    List<String> lines = run(input, "-").out().lines().toList();

    assertThat(lines).hasSize(2);
    assertThat(lines.get(0)).contains("\"problem\":\"too-large\"").hasSizeLessThan(1000);
    assertThat(reference(lines.get(1))).isEqualTo("home 1");
  }

  @Test
  void nothingInAStreamIsNoSuccess() {
    for (String nothing : List.of("", "\n \n")) {
      CommandLineRun run = run(nothing, "-");

      assertThat(run.exit()).isEqualTo(3);
      assertThat(run.out()).contains("\"problem\":\"empty\"").hasLineCount(1);
    }
  }

  /** Parts packed one by one and put together are one file, as gzip has it. */
  @Test
  void filesOfLinesMayBePacked() throws IOException {
    List<String> homes = homes(40).toList();
    Path plain = Files.writeString(folder.resolve("a.jsonl"), text(homes.stream()));
    Path packed = folder.resolve("a.jsonl.gz");
    for (List<String> part : List.of(homes.subList(0, 3), homes.subList(3, 40))) {
      Files.write(
          packed, gzip(text(part.stream())), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    String expected = run("", plain.toString()).out();

    assertThat(expected).hasLineCount(40);
    assertThat(run("", packed.toString()).out().replace("a.jsonl.gz", "a.jsonl"))
        .isEqualTo(expected);
  }

  @Test
  void aPackedFileThatIsCutShortIsSaidToBe() throws IOException {
    byte[] whole = gzip(text(homes(5)));
    Path cut = folder.resolve("cut.jsonl.gz");
    Files.write(cut, Arrays.copyOf(whole, whole.length - 20));

    CommandLineRun run = run("", cut.toString());

    assertThat(run.exit()).isEqualTo(3);
    assertThat(run.out().lines().reduce((first, last) -> last).orElseThrow())
        .contains("\"problem\":\"not-readable\"", "cut.jsonl.gz:");
  }

  private static byte[] gzip(String text) throws IOException {
    var bytes = new ByteArrayOutputStream();
    try (OutputStream out = new GZIPOutputStream(bytes)) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return bytes.toByteArray();
  }

  @Test
  void withoutRemediesTheSameIsFound() {
    String faulty = "sample-configs/faulty/stop-just-under-start.json";
    CommandLineRun whole = run("", faulty);
    CommandLineRun quick = run("", "--no-remedies", faulty);

    assertThat(quick.exit()).isEqualTo(whole.exit());
    assertThat(member(quick.out(), "check")).isEqualTo("gap-below-heat-pump-draw");
    assertThat(whole.out()).doesNotContain("\"changes\":[],");
    assertThat(quick.out()).contains("\"changes\":[],");
  }

  // In a process of its own ---------------------------------------------------------------------

  private static ProcessBuilder process(String heap, String... words) {
    List<String> command =
        new ArrayList<>(
            List.of(
                ProcessHandle.current().info().command().orElse("java"),
                heap,
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                classPath(),
                "deadband.cli.Main"));
    command.addAll(List.of(QUICK));
    command.addAll(List.of(words));
    return new ProcessBuilder(command);
  }

  /** The class path of the tests, however they were started. */
  private static String classPath() {
    return JsonLinesTest.class.getClassLoader() instanceof URLClassLoader loader
        ? Arrays.stream(loader.getURLs())
            .map(url -> Path.of(URI.create(url.toString())).toString())
            .collect(Collectors.joining(File.pathSeparator))
        : System.getProperty("java.class.path");
  }

  /** Held to the end, the names of the homes alone would need 80 MB. */
  @Test
  void memoryDoesNotGrowWithTheNumberOfHomes() throws IOException, InterruptedException {
    int number = 1000;
    String name = "a home ".repeat(6000);
    Path homes = folder.resolve("many.jsonl.gz");
    try (Writer out =
        new OutputStreamWriter(
            new GZIPOutputStream(Files.newOutputStream(homes)), StandardCharsets.UTF_8)) {
      for (String home : homes(number).toList()) {
        out.write(home.replace("\"home ", "\"" + name) + "\n");
      }
    }
    Path answers = folder.resolve("answers");

    Process run =
        process("-Xmx64m", "--no-remedies", "--fail-on=never", homes.toString())
            .redirectOutput(answers.toFile())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();

    assertThat(run.waitFor(5, TimeUnit.MINUTES)).isTrue();
    assertThat(run.exitValue()).isZero();
    try (Stream<String> lines = Files.lines(answers)) {
      assertThat(lines.filter(line -> line.contains(name))).hasSize(number);
    }
  }

  /** Standard input stays open: the run can only end because it is stopped. */
  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aRunThatIsStoppedLeavesWholeLines() throws IOException, InterruptedException {
    Process run = process("-Xmx256m", "-").start();
    Thread feeding =
        new Thread(
            () -> {
              try (var in = run.outputWriter()) {
                String all = text(homes(200));
                while (run.isAlive()) {
                  in.write(all);
                }
              } catch (IOException e) {
                // the run has ended
              }
            });
    feeding.start();
    List<String> lines = new ArrayList<>();
    StringBuilder all = new StringBuilder();
    try (BufferedReader out = run.inputReader()) {
      while (lines.size() < 150) {
        lines.add(out.readLine());
      }
      run.toHandle().destroy(); // that of the process closes its streams
      char[] rest = new char[1 << 16];
      for (int n = out.read(rest); n >= 0; n = out.read(rest)) {
        all.append(rest, 0, n);
      }
    }
    feeding.join();

    assertThat(run.waitFor()).isEqualTo(143);
    assertThat(lines).allMatch(line -> line.startsWith("{") && line.endsWith("}"));
    assertThat(all.toString()).matches("(?s)|.*}\n");
  }

  /** A year takes fifty times as long as the rest of a home. */
  @Test
  void withoutTheYearOnlyItsFiguresAreMissing() {
    String[] check = {"check", "--format=json", "--as-of=2026-05-31", FAULTY.toString()};
    String[] without = {
      "check", "--format=json", "--as-of=2026-05-31", "--no-year", FAULTY.toString()
    };
    String whole = CommandLineRun.of(check).out();

    assertThat(whole).contains("\"year\": {");
    assertThat(CommandLineRun.of(without).out())
        .isEqualTo(whole.replaceAll("(?s)\"year\": \\{.*?\\}.*?\\}.*?\\}", "\"year\": null"));
  }
}
