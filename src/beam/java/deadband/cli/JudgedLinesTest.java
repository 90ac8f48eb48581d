package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.beam.JudgedLines;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pipeline says of each line what the command line says of it. */
class JudgedLinesTest {

  private static final String AS_OF = "2026-05-31";

  @TempDir private Path folder;

  @Test
  void eachLineIsJudgedAsByTheCommandLine() throws Exception {
    List<String> homes = homes();
    assertThat(homes).hasSizeGreaterThan(80);
    homes.add("{ \"relay\": { \"start_kW\": \"three\" } }");
    Path lines = Files.write(folder.resolve("homes.jsonl"), homes);
    JudgedLines.main(
        new String[] {
          "--runner=DirectRunner",
          "--input=" + lines,
          "--output=" + folder.resolve("judged"),
          "--asOf=" + AS_OF
        });

    CommandLineRun run =
        CommandLineRun.of(
            "check", "--no-day-run", "--format=jsonl", "--as-of=" + AS_OF, lines.toString());
    assertThat(run.exit()).isEqualTo(3);
    assertThat(judged())
        .hasSameSizeAs(homes)
        .containsExactlyInAnyOrderElementsOf(run.out().lines().map(this::unnamed).toList());
  }

  /** The samples that name no equipment files, a line each. */
  private static List<String> homes() throws IOException {
    List<String> homes = new ArrayList<>();
    try (Stream<Path> files = Files.walk(Path.of("sample-configs"))) {
      for (Path file : files.filter(each -> each.toString().endsWith(".json")).sorted().toList()) {
        String text = Files.readString(file);
        boolean sheet = file.toString().contains("equipment") || text.contains("\"equipment\"");
        if (!sheet) {
          homes.add(text.replaceAll("(?m)(^|\\s)//.*$", "").replace('\n', ' '));
        }
      }
    }
    return homes;
  }

  private List<String> judged() throws IOException {
    List<String> lines = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path shard : files.filter(file -> file.toString().contains("judged-")).toList()) {
        Files.readAllLines(shard).forEach(line -> lines.add(unnamed(line)));
      }
    }
    return lines;
  }

  /** Without the names of the tool and of the line, which a pipeline does not number. */
  private String unnamed(String report) {
    return report.replaceAll("\"(version|file)\":\"[^\"]*\"", "\"$1\":\"\"");
  }
}
