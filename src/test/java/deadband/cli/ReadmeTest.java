package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.Snapshot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What the README shows is what the program prints. */
class ReadmeTest {

  private static final Path README = Path.of("README.md");
  private static final String COMMAND = "target/deadband/bin/deadband ";

  @Test
  @Tag("snapshot")
  void theOutputShownIsReal() throws IOException {
    String readme = Files.readString(README);
    String command =
        readme.lines().filter(line -> line.contains(COMMAND)).findFirst().orElseThrow();
    String[] words = command.substring(command.indexOf(COMMAND) + COMMAND.length()).split(" ", -1);

    CommandLineRun run = CommandLineRun.of(words);
    assertThat(run.exit()).isEqualTo(Exit.VERDICT);
    Snapshot.isKeptBetween("```text\n", "```", README, run.out(), Snapshot::apartFromRuleBook);
  }

  @Test
  @Tag("snapshot")
  void theDiagnosisShownIsThatOfTheSample() throws IOException {
    String story = Files.readString(Path.of("sample-configs/logs/stuck-valve.story"));
    String part = story.substring(story.indexOf("\nruns ") + 1, story.indexOf("\nnote ")).strip();

    Snapshot.isKeptBetween(
        "what it cannot see:\n\n```text\n", "```", README, part + "\n", text -> text);
  }

  @Test
  void everyCommandIsNamed() throws IOException {
    String readme = Files.readString(README);

    assertThat(
            List.of(
                "new", "check", "simulate", "propose", "explain", "checks", "schema", "completion"))
        .allSatisfy(command -> assertThat(readme).contains("`deadband " + command));
  }
}
