package deadband.launcher;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import deadband.report.SetupSchema;
import deadband.report.StarterFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands in the folder that users unpack. */
class DistributionTest {
  private static final Path LIBRARY = Unpacked.BUILT.resolve("lib");

  @Test
  void holdsNothingElse() throws IOException {
    try (Stream<Path> entries = Files.list(Unpacked.BUILT)) {
      assertThat(entries.map(e -> e.getFileName().toString()))
          .containsExactlyInAnyOrder(
              "LICENSE",
              "README.md",
              "THIRD-PARTY.txt",
              "bin",
              "completion",
              "lib",
              "new-setup.jsonc",
              "sample-configs",
              "setup.schema.json");
    }
  }

  @Test
  void holdsWhatTheProgramWritesOfItself() throws IOException {
    assertThat(Unpacked.BUILT.resolve("new-setup.jsonc")).hasContent(StarterFile.text());
    assertThat(Unpacked.BUILT.resolve("setup.schema.json")).hasContent(SetupSchema.text());
  }

  @Test
  void holdsEverySample() throws IOException {
    assertThat(samples(Unpacked.BUILT)).isEqualTo(samples(Path.of(""))).hasSizeGreaterThan(100);
  }

  private static List<String> samples(Path folder) throws IOException {
    Path samples = folder.resolve("sample-configs");
    try (Stream<Path> files = Files.walk(samples)) {
      return files.map(samples::relativize).map(Path::toString).sorted().toList();
    }
  }

  /** The links of README that leave the folder are those for contributors alone. */
  @Test
  void holdsWhatItsReadmeNamesForUsers() throws IOException {
    Matcher link =
        Pattern.compile("\\]\\(([^)#]+)[^)]*\\)")
            .matcher(Files.readString(Unpacked.BUILT.resolve("README.md")));

    assertThat(link.results().map(found -> found.group(1)).distinct())
        .filteredOn(target -> !Files.exists(Unpacked.BUILT.resolve(target)))
        .allMatch(target -> target.matches("(DEVELOPERS\\.md|rules|src/site)(/.*)?"));
  }

  /** In a shell, as it is used. */
  @ParameterizedTest
  @CsvSource({
    "deadband che, check",
    "deadband check --fail-on n, not-ready",
    "deadband new --ov, --overwrite"
  })
  void completesCommandsOptionsAndChoices(String typed, String completed) throws Exception {
    Path bash = Path.of("/bin/bash");
    assumeTrue(Files.isExecutable(bash), "no bash here");
    String script =
        """
        . "$1"; shift
        COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); COMP_LINE="$*"
        _complete_deadband
        printf '%s ' "${COMPREPLY[@]}"
        """;
    List<String> words = new ArrayList<>(List.of(bash.toString(), "-c", script, "bash"));
    words.add(Unpacked.BUILT.resolve("completion/deadband.bash").toString());
    words.addAll(List.of(typed.split(" ", -1)));
    Process shell = new ProcessBuilder(words).start();

    assertThat(shell.inputReader().readLine().split(" ", -1)).contains(completed);
  }

  @Test
  void canBeRunAsItIs() {
    assertThat(Unpacked.BUILT.resolve("bin/deadband")).isExecutable();
  }

  @Test
  void isSmallForItLoadsRulesAndCompilesNone() throws IOException {
    assertThat(jars())
        .noneMatch(
            jar -> jar.matches("(drools-(compiler|ecj|drl-.*)|ecj|antlr.*|mvel.*|xstream)-.*"));
    long program = 0;
    long libraries = 0;
    for (String jar : jars()) {
      long bytes = Files.size(LIBRARY.resolve(jar));
      program += jar.equals("deadband.jar") ? bytes : 0;
      libraries += jar.equals("deadband.jar") ? 0 : bytes;
    }
    assertThat(program).isLessThan(6_000_000);
    assertThat(libraries).isLessThan(5_000_000);
  }

  @Test
  void givesNoticeOfEveryPart() throws IOException {
    List<String> noticed =
        Files.readAllLines(Unpacked.BUILT.resolve("THIRD-PARTY.txt")).stream()
            .filter(line -> line.matches(" {2}\\S.* (Apache-2\\.0|MIT|BSD-3-Clause|EPL-2\\.0) .*"))
            .map(line -> line.strip().split(" ", 2)[0])
            .toList();

    assertThat(
            Stream.concat(jars().stream(), houseJars().stream())
                .filter(jar -> !jar.equals("deadband.jar"))
                .map(DistributionTest::name))
        .containsExactlyInAnyOrderElementsOf(noticed);
  }

  /** The compiler of house rules is there, off the class path, and nothing stands twice. */
  @Test
  void keepsTheRuleCompilerApart() {
    assertThat(houseJars()).anyMatch(jar -> jar.startsWith("drools-drl-parser-"));
    assertThat(houseJars()).doesNotContainAnyElementsOf(jars());
  }

  @Test
  void needsNoSwitchToStart() throws IOException {
    try (JarFile jar = new JarFile(LIBRARY.resolve("deadband.jar").toFile())) {
      var manifest = jar.getManifest().getMainAttributes();
      assertThat(manifest.getValue("Main-Class")).isEqualTo("deadband.cli.Main");
      assertThat(manifest.getValue("Class-Path").split(" ")).allMatch(jars()::contains);
      assertThat(manifest.getValue("Implementation-Version"))
          .isEqualTo(System.getProperty("deadband.version"));
    }
  }

  private static List<String> jars() {
    return jars(LIBRARY);
  }

  private static List<String> houseJars() {
    return jars(LIBRARY.resolve("house"));
  }

  private static List<String> jars(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(f -> f.endsWith(".jar"))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String name(String jar) {
    return jar.replaceFirst("-\\d.*", "");
  }
}
