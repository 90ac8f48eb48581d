package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every option that writes a file writes it with the same care. */
class OutputsTest {

  private static final String HOME = "sample-configs/faulty/stop-just-under-start.json";

  @TempDir private Path folder;
  private Path home;

  @BeforeEach
  void aHome() throws IOException {
    home = folder.resolve("home.json");
    Files.copy(Path.of(HOME), home);
  }

  /** Runs the command that has this option, writing to that file. */
  private CommandLineRun writing(String option, Path to, String... more) {
    String command = option.equals("--out") || option.equals("--patch") ? "propose" : "simulate";
    List<String> words = new ArrayList<>(List.of(command, home.toString(), option, to.toString()));
    words.addAll(List.of(more));
    return CommandLineRun.of(words.toArray(String[]::new));
  }

  private void isRefused(CommandLineRun run, String says) throws IOException {
    assertThat(run.exit()).isEqualTo(Exit.USAGE);
    assertThat(run.err()).contains(says);
    assertThat(run.out()).isEmpty();
    assertThat(home).hasSameTextualContentAs(Path.of(HOME));
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).noneMatch(file -> file.toString().endsWith(".part"));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"--out", "--patch", "--trace", "--chart"})
  void anInputIsNeverWrittenOver(String option) throws IOException {
    isRefused(writing(option, home), "is an input and is never replaced");
    isRefused(writing(option, home, "--overwrite"), "is an input and is never replaced");
    Path winding = folder.resolve("..").resolve(folder.getFileName()).resolve("home.json");
    isRefused(writing(option, winding, "--overwrite"), "is an input");
  }

  @ParameterizedTest
  @ValueSource(strings = {"--out", "--patch", "--trace", "--chart"})
  void whatIsThereIsReplacedOnlyWhenToldAndKeepsItsMode(String option) throws IOException {
    Path there = folder.resolve("there");
    Files.writeString(there, "mine");
    isRefused(writing(option, there), "already exists; use --overwrite to replace it");
    assertThat(there).hasContent("mine");

    assumeThat(FileSystems.getDefault().supportedFileAttributeViews()).contains("posix");
    Files.setPosixFilePermissions(there, PosixFilePermissions.fromString("rw-r-----"));
    assertThat(writing(option, there, "--overwrite").exit()).isLessThan(Exit.USAGE);
    assertThat(Files.readString(there)).isNotEqualTo("mine");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(there)))
        .isEqualTo("rw-r-----");
  }

  @ParameterizedTest
  @ValueSource(strings = {"--out", "--trace"})
  void linksAreRefusedWhateverTheyPointTo(String option) throws IOException {
    Path victim = folder.resolve("victim");
    Files.writeString(victim, "mine");
    Path link = Files.createSymbolicLink(folder.resolve("link"), victim);
    Path dangling = Files.createSymbolicLink(folder.resolve("dangling"), folder.resolve("none"));

    isRefused(writing(option, link, "--overwrite"), "is a link; name the file itself");
    isRefused(writing(option, dangling), "is a link; name the file itself");
    assertThat(victim).hasContent("mine");
  }

  @ParameterizedTest
  @ValueSource(strings = {"--patch", "--chart"})
  void foldersAndDevicesAreRefused(String option) throws IOException {
    isRefused(writing(option, folder, "--overwrite"), "is a folder");
    assumeThat(Path.of("/dev/null")).exists();
    isRefused(writing(option, Path.of("/dev/null"), "--overwrite"), "is a device or a pipe");
  }

  @Test
  void twoOutputsAreTwoFiles() throws IOException {
    Path one = folder.resolve("one");
    isRefused(writing("--out", one, "--patch", one.toString()), "is named for two outputs");
    isRefused(writing("--trace", one, "--chart", one.toString()), "is named for two outputs");
  }

  @Test
  void aDayFileIsAnInputToo() throws IOException {
    Path day = folder.resolve("day.csv");
    assertThat(writing("--trace", day).exit()).isEqualTo(Exit.READY);
    String before = Files.readString(day);

    isRefused(writing("--trace", day, "--overwrite", "--day", day.toString()), "is an input");
    assertThat(day).hasContent(before);
  }

  @Test
  void aNewFileIsAsOpenAsAnyOther() throws IOException {
    assumeThat(FileSystems.getDefault().supportedFileAttributeViews()).contains("posix");
    Path plain = Files.createFile(folder.resolve("plain"));
    Path made = folder.resolve("made.csv");
    writing("--trace", made);

    assertThat(Files.getPosixFilePermissions(made)).isEqualTo(Files.getPosixFilePermissions(plain));
  }
}
