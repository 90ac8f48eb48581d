package deadband;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program that makes a new check, and that nothing it leaves open stays in the project. */
class NewCheckTest {

  private static final List<String> NEEDED =
      List.of(
          "src/dev/java/NewCheck.java",
          "src/dev/new-check/Fact.java",
          "src/dev/new-check/page.md",
          "src/dev/new-check/rule.drl",
          "src/dev/new-check/sample.expected",
          "rules/grid/grid.drl",
          "src/main/java/deadband/topics/Topics.java",
          "sample-configs/good/mill-cottage.json");

  @TempDir private Path project;

  private int run(String... words) throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    List<String> command =
        Stream.concat(Stream.of(java, "src/dev/java/NewCheck.java"), Stream.of(words)).toList();
    return new ProcessBuilder(command)
        .directory(project.toFile())
        .redirectErrorStream(true)
        .redirectOutput(project.resolve("out.txt").toFile())
        .start()
        .waitFor();
  }

  private String text(String file) throws IOException {
    return Files.readString(project.resolve(file));
  }

  @Test
  void makesWhatACheckConsistsOf() throws IOException, InterruptedException {
    for (String file : NEEDED) {
      Files.createDirectories(project.resolve(file).getParent());
      Files.copy(Path.of(file), project.resolve(file));
    }
    Files.createDirectories(project.resolve("src/main/java/deadband/topics/grid"));
    Files.createDirectories(project.resolve("sample-configs/faulty"));

    assertThat(run("grid", "pump-on-no-phase")).as(text("out.txt")).isZero();

    assertThat(text("rules/grid/grid.drl"))
        .contains("import deadband.topics.grid.PumpOnNoPhase;", "\nrule \"pump-on-no-phase\"\n");
    assertThat(text("rules/grid/pump-on-no-phase.md")).startsWith("# pump-on-no-phase\n");
    assertThat(text("src/main/java/deadband/topics/grid/PumpOnNoPhase.java"))
        .contains("public record PumpOnNoPhase(");
    assertThat(text("src/main/java/deadband/topics/Topics.java"))
        .contains(
            "import deadband.topics.grid.PumpOnNoPhase;\n",
            "          Derivation.held(PumpOnNoPhase::derive),\n          DAYS,\n");
    assertThat(text("sample-configs/faulty/pump-on-no-phase.json")).contains("TODO");
    assertThat(text("sample-configs/faulty/pump-on-no-phase.expected")).contains("TODO");
    assertThat(run("grid", "pump-on-no-phase")).as("made twice").isNotZero();
    assertThat(text("out.txt")).contains("nothing was made: rules/grid/pump-on-no-phase.md");
  }

  @Test
  void nothingIsLeftToFill() throws IOException {
    for (String folder : List.of("rules", "sample-configs", "src/main/java")) {
      try (Stream<Path> files = Files.walk(Path.of(folder))) {
        assertThat(files.filter(Files::isRegularFile))
            .allSatisfy(file -> assertThat(Files.readString(file)).doesNotContain("TODO"));
      }
    }
  }
}
