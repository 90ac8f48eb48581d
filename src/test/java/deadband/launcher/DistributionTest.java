package deadband.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What stands in the folder that users unpack. */
class DistributionTest {
  private static final Path LIBRARY = Unpacked.BUILT.resolve("lib");

  @Test
  void holdsNothingElse() throws IOException {
    try (Stream<Path> entries = Files.list(Unpacked.BUILT)) {
      assertThat(entries.map(e -> e.getFileName().toString()))
          .containsExactlyInAnyOrder("LICENSE", "THIRD-PARTY.txt", "bin", "lib");
    }
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
    long bytes = 0;
    for (String jar : jars()) {
      bytes += Files.size(LIBRARY.resolve(jar));
    }
    assertThat(bytes).isLessThan(8_000_000);
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
