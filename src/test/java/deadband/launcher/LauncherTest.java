package deadband.launcher;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import deadband.launcher.Unpacked.Result;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the sh launcher must survive. Runs after packaging, on a copy of the built folder whose path
 * has blanks, an apostrophe and a letter beyond ASCII in it; each test has a home of its own. What
 * costs seconds, a whole check and the training of an archive, is done once for all.
 */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {
  private static final String NOTHING = "exit 0";

  @TempDir static Path shared;

  private static Unpacked installed;
  private static Result plain;

  @TempDir Path folder;
  private Unpacked deadband;

  @BeforeAll
  static void install() {
    installed = Unpacked.into(shared, "Mill's van, März");
    plain = installed.check(installed.withoutArchive());
  }

  @BeforeEach
  void useWhatIsInstalled() {
    deadband = installed.seenFrom(folder);
  }

  /** For a test that damages it. */
  private void installAnother(String name) {
    deadband = Unpacked.into(folder, name);
  }

  @AfterEach
  void leaveNothingRunning() {
    deadband.awaitQuiet();
  }

  /** On a terminal the report is as wide as the terminal, and no line is wider. */
  @ParameterizedTest
  @ValueSource(ints = {60, 80, 120})
  void fillsTheTerminal(int columns) {
    Map<String, String> environment = deadband.withoutArchive();
    assumeThat(deadband.execute(environment, List.of("sh", "-c", "script --version")).out())
        .as("script of util-linux, which gives a command a terminal")
        .contains("util-linux");
    String command =
        "stty cols %d; cd %s; exec ../bin/deadband check training.json 2>/dev/null"
            .formatted(columns, quoted(deadband.libFolder()));

    String out =
        deadband.execute(environment, List.of("script", "-qec", command, "/dev/null")).out();

    assertThat(out.lines().map(line -> line.replaceAll("\u001b\\[\\d*m|\r", "")))
        .allMatch(line -> line.codePointCount(0, line.length()) <= columns)
        .anyMatch(line -> line.codePointCount(0, line.length()) == columns);
  }

  private static String quoted(Object word) {
    return "'" + word.toString().replace("'", "'\\''") + "'";
  }

  // With the Java that runs the tests -----------------------------------------------------------

  @Test
  void tellsTheVersionOfTheBuild() {
    Result result = deadband.run(deadband.withoutArchive(), "--version");

    assertThat(result.exit()).isZero();
    assertThat(result.out()).contains(System.getProperty("deadband.version"));
    assertThat(result.err()).isEmpty();
  }

  @Test
  void compilesHouseRulesWhereTheyAreAskedFor() throws IOException {
    Path rules = Files.createDirectories(folder.resolve("our rules"));
    Files.writeString(
        rules.resolve("house.drl"),
        """
        package house;
        import deadband.topics.thresholds.RelayGap;
        import function deadband.judging.Found.found;
        rule "any-gap"
            @consequence("query")
            @title("There is a gap")
            @why("Tried by a test.")
        when
            $gap : RelayGap( width_kW.isBelow( 99 ) )
        then
            found( kcontext, $gap );
        end
        """);
    String[] words = {
      "check", "--fail-on", "never", "--rules", rules.toString(), deadband.sample()
    };
    Result result = deadband.run(deadband.withoutArchive(), words);

    assertThat(result.exit()).isZero();
    assertThat(result.out()).contains("any-gap (house rule)");
    assertThat(result.err()).contains("house rules are code");

    installAnother("without the compiler");
    deleteAll(deadband.libFolder().resolve("house"));
    Result without = deadband.run(deadband.withoutArchive(), words);
    assertThat(without.exit()).isEqualTo(70);
    assertThat(without.err()).contains("lib/house").doesNotContain("\tat ");
  }

  private static void deleteAll(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }

  @Test
  void runsWithoutAHome() {
    Map<String, String> env = deadband.surroundings();
    env.remove("HOME");

    assertThat(deadband.check(env)).isEqualTo(plain);
  }

  @Test
  void readsFileNamesBeyondAsciiWithoutALocale() throws IOException {
    Path file = deadband.workplace().resolve("Mühle 水.json");
    Files.copy(Path.of(deadband.sample()), file);

    Result result = deadband.run(deadband.withoutArchive(), "check", file.getFileName().toString());

    assertThat(result.out()).contains("Mühle 水.json");
    assertThat(result.exit()).isEqualTo(plain.exit());
  }

  @Test
  void isFoundThroughSymbolicLinks() throws IOException {
    Result version = deadband.run(deadband.withoutArchive(), "--version");
    Path bin = Files.createDirectories(folder.resolve("my bin"));
    Path direct = Files.createSymbolicLink(bin.resolve("direct"), deadband.launcher());
    Path relative = Files.createSymbolicLink(bin.resolve("db"), Path.of("direct"));
    Map<String, String> env = deadband.withoutArchive();
    env.merge("PATH", bin.toString(), (path, more) -> more + ":" + path);

    assertThat(version.exit()).isZero();
    for (String name : List.of(direct.toString(), relative.toString(), "../my bin/db", "db")) {
      List<String> shell = List.of("sh", "-c", "exec \"$@\"", "sh", name, "--version");
      assertThat(deadband.execute(env, shell)).isEqualTo(version);
    }
  }

  // With a stand-in for Java --------------------------------------------------------------------

  @Test
  void saysWhatToInstallWhereThereIsNoJava() {
    Result result = deadband.run(Map.of("PATH", "/nowhere"), "check", "x.json");

    assertThat(result.exit()).isEqualTo(70);
    assertThat(result.out()).isEmpty();
    assertThat(result.err())
        .startsWith("deadband: no Java found. Install Java 17 or newer")
        .hasLineCount(1);
  }

  @Test
  void saysThatJavaHomeIsWrong() {
    Result result = deadband.run(deadband.with("JAVA_HOME", "/no where"), "check", "x.json");

    assertThat(result.exit()).isEqualTo(70);
    assertThat(result.err()).contains("JAVA_HOME is /no where").hasLineCount(1);
  }

  @Test
  void refusesAnOldJava() {
    assertThat(refusal(deadband.fakeJava("java 8", "1.8.0_392", NOTHING)))
        .contains("Java 1.8.0_392");
    assertThat(refusal(deadband.fakeJava("java 16", "16.0.2", NOTHING))).contains("Java 16.0.2");
    Path mute =
        deadband.fakeJava("java 11", "", "echo 'openjdk version \"11.0.2\" 2019-01-15' >&2");
    assertThat(refusal(mute)).contains("Java 11.0.2");
  }

  @Test
  void takesANewerJava() {
    for (String version : List.of("17", "17.0.15", "25.0.1")) {
      Path java = deadband.fakeJava("java " + version, version, NOTHING);
      assertThat(deadband.run(deadband.offWith(java), "checks").exit()).isZero();
    }
    Path mute = deadband.fakeJava("java 21", "", "echo 'openjdk version \"21\" 2023-09-19' >&2");
    assertThat(deadband.run(deadband.offWith(mute), "checks").exit()).isZero();
  }

  @Test
  void takesTheFirstJavaOnThePath() throws IOException {
    Path java = deadband.fakeJava("jvm", "17", NOTHING);
    Path bin = Files.createDirectories(folder.resolve("bin"));
    Files.createSymbolicLink(bin.resolve("java"), java.resolve("bin/java"));
    Map<String, String> env = deadband.withoutArchive();
    env.remove("JAVA_HOME");
    env.merge("PATH", bin.toString(), (path, more) -> more + ":" + path);

    assertThat(deadband.run(env, "checks").exit()).isZero();
    assertThat(Unpacked.calls(java)).contains("checks");
  }

  @Test
  void handsOnEveryArgumentAndTheExitCodeAsTheyAre() {
    Path java = deadband.fakeJava("jvm", "17", "exit 3");
    String[] words = {"check", "a  b", "", "*", "$HOME", "\\n", "it's", "\"q\"", "--", "-x"};

    Result result = deadband.run(deadband.offWith(java), words);

    assertThat(result).isEqualTo(new Result(3, "", ""));
    assertThat(Unpacked.calls(java)).endsWith(words);
  }

  @Test
  void handsOnStandardInput() throws Exception {
    Path java = deadband.fakeJava("jvm", "17", "cat");
    Process run =
        deadband.start(
            deadband.offWith(java), List.of(deadband.launcher().toString(), "check", "-"));
    run.outputWriter().append("{ }").close();

    assertThat(run.getInputStream()).hasContent("{ }");
    assertThat(run.waitFor()).isZero();
  }

  @Test
  void handsOnJvmOptions() {
    Path java = deadband.fakeJava("jvm", "17", NOTHING);
    Map<String, String> env = deadband.offWith(java);
    env.put("DEADBAND_JAVA_OPTS", "-Xmx64m  -Dglob=*");

    deadband.run(env, "checks");

    assertThat(Unpacked.calls(java)).containsSubsequence("-Xmx64m", "-Dglob=*", "-cp");
    assertThat(Unpacked.calls(java)).contains("-XX:+UseSerialGC");
  }

  @Test
  void leavesTheChoiceOfCollectorToTheUser() {
    Path java = deadband.fakeJava("jvm", "17", NOTHING);
    Map<String, String> env = deadband.offWith(java);
    env.put("DEADBAND_JAVA_OPTS", "-XX:+UseG1GC");

    deadband.run(env, "checks");

    assertThat(Unpacked.calls(java)).contains("-XX:+UseG1GC").doesNotContain("-XX:+UseSerialGC");
  }

  @Test
  void takesLargePagesOnlyWhereTheSystemGivesThem() throws IOException {
    Path java = deadband.fakeJava("jvm", "17", NOTHING);
    Path pages = Path.of("/sys/kernel/mm/transparent_hugepage/enabled");
    boolean given = Files.isReadable(pages) && !Files.readString(pages).contains("[never]");

    deadband.run(deadband.offWith(java), "checks");

    assertThat(Unpacked.calls(java).contains("-XX:+UseTransparentHugePages")).isEqualTo(given);
  }

  @Test
  void compilesAStreamInSmallerPieces() {
    Path java = deadband.fakeJava("jvm of a stream", "17", NOTHING);
    deadband.run(deadband.offWith(java), "check", "--format=jsonl", "x");
    assertThat(Unpacked.calls(java)).contains("-XX:InlineSmallCode=500", "-XX:FreqInlineSize=60");
  }

  @Test
  void letsLongCommandsCompileInFull() {
    List<List<String>> commands =
        List.of(
            List.of("simulate", "x.json"),
            List.of("propose", "x.json"),
            List.of("check", "--format", "jsonl", "x"),
            List.of("check", "--format=jsonl", "x"));
    for (List<String> words : commands) {
      Path java = deadband.fakeJava("jvm for " + String.join(" ", words), "17", NOTHING);
      deadband.run(deadband.offWith(java), words.toArray(String[]::new));
      assertThat(Unpacked.calls(java))
          .contains("-XX:+UseParallelGC")
          .doesNotContain("-XX:TieredStopAtLevel=1");
    }
  }

  @Test
  void saysThatItsOtherHalfIsMissing() throws IOException {
    installAnother("another");
    Files.delete(deadband.libFolder().resolve("deadband.jar"));

    Result result = deadband.run("checks");

    assertThat(result.exit()).isEqualTo(70);
    assertThat(result.err()).contains("lib/deadband.jar is missing").hasLineCount(1);
  }

  @Test
  void saysThatItsOtherHalfWasCutShort() throws IOException {
    installAnother("another");
    for (double share : new double[] {0.99, 0.5, 0}) {
      Unpacked.cut(deadband.libFolder().resolve("deadband.jar"), share);
      Result result = deadband.run(deadband.withoutArchive(), "checks");

      assertThat(result.exit()).isEqualTo(70);
      assertThat(result.out()).isEmpty();
      assertThat(result.err()).contains("lib/deadband.jar is damaged").hasLineCount(1);
    }
  }

  /** Every other jar that a check with a report in JSON needs: missing, or cut short. */
  @Test
  void saysInASentenceThatAnotherJarIsMissingOrCutShort() throws IOException {
    for (String library : List.of("picocli", "jackson-core", "drools-base")) {
      for (boolean gone : new boolean[] {false, true}) {
        installAnother(library + gone);
        Path jar;
        try (var jars = Files.list(deadband.libFolder())) {
          jar =
              jars.filter(at -> at.getFileName().toString().startsWith(library))
                  .findFirst()
                  .orElseThrow();
        }
        if (gone) {
          Files.delete(jar);
        } else {
          Unpacked.cut(jar, 0.5);
        }
        Result result =
            deadband.run(deadband.withoutArchive(), "check", "--format", "json", deadband.sample());

        assertThat(result.exit()).as(library).isEqualTo(70);
        assertThat(result.err())
            .as(library)
            .contains("unpack the whole folder again")
            .hasLineCount(1);
      }
    }
  }

  @Test
  void aFullStandardOutputIsNoSuccess() {
    for (String to : List.of(">/dev/full", ">&-")) {
      List<String> words =
          new ArrayList<>(
              List.of("sh", "-c", "\"$@\" " + to, "sh", deadband.launcher().toString()));
      words.add("checks");
      Result result = deadband.execute(deadband.withoutArchive(), words);

      assertThat(result.exit()).as(to).isEqualTo(5);
      assertThat(result.err()).as(to).contains("standard output could not be written");
    }
  }

  @Test
  void isReadableByTheOldShellOfWindows() throws IOException {
    String batch = Files.readString(Unpacked.BUILT.resolve("bin/deadband.cmd"), US_ASCII);

    assertThat(batch.split("\r\n", -1)).hasSizeGreaterThan(10);
    assertThat(batch.replace("\r\n", "")).doesNotContain("\r", "\n");
  }

  // ----------------------------------------------------------------------------------------------

  private String refusal(Path java) {
    Result result = deadband.run(deadband.offWith(java), "checks");
    assertThat(result.exit()).isEqualTo(70);
    assertThat(result.out()).isEmpty();
    assertThat(result.err()).contains("too old", "Install Java 17 or newer").hasLineCount(1);
    return result.err();
  }
}
