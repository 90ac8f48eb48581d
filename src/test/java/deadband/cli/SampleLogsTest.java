package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.Snapshot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A pasted text and a meter log of each fault, and the story that is printed of them. A build tries
 * a few; {@code -Ddeadband.homes=20} all.
 */
class SampleLogsTest {

  private static final Path LOGS = Path.of("sample-configs", "logs");
  private static final List<String> EACH_BUILD =
      List.of("gap-below-input", "nothing-unusual", "stuck-valve");

  static Stream<String> samples() throws IOException {
    boolean all =
        Integer.getInteger("deadband.homes", 2) > 2 || Boolean.getBoolean("deadband.bless");
    try (Stream<Path> files = Files.list(LOGS)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".txt"))
          .map(name -> name.replace(".txt", ""))
          .filter(name -> all || EACH_BUILD.contains(name))
          .sorted()
          .toList()
          .stream();
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  @Tag("snapshot")
  void theStoryIsPrinted(String name) throws IOException {
    CommandLineRun run =
        CommandLineRun.of(
            "diagnose",
            "--as-of",
            "2026-11-27",
            LOGS.resolve(name + ".txt").toString(),
            "--log",
            LOGS.resolve(name + ".csv").toString());

    assertThat(run.err()).isEmpty();
    assertThat(run.exit()).isEqualTo(name.equals("nothing-unusual") ? Exit.READY : Exit.VERDICT);
    assertThat(run.out()).containsSubsequence("\n1  ", name, "to confirm");
    Snapshot.isKept(LOGS.resolve(name + ".story"), run.out());
  }
}
