package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The command line under conditions that nobody wishes for. */
class RobustnessTest {

  private static final String GOOD = "sample-configs/good/mill-cottage.json";
  private static final String FAULTY = "sample-configs/faulty/stop-just-under-start.json";

  @TempDir private Path folder;

  /** A disk that is full, or a reader that has gone. */
  private static final class Full extends OutputStream {
    @Override
    public void write(int octet) throws IOException {
      throw new IOException("no space left");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check " + GOOD,
        "check " + FAULTY,
        "propose " + FAULTY,
        "simulate " + GOOD,
        "explain no-cloud-delay",
        "checks",
        "schema",
        "--help",
        "--version"
      })
  void whatCannotBePrintedIsNoSuccess(String line) {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console = Console.of(InputStream.nullInputStream(), new Full(), err, Map.of());

    assertThat(Program.of(console).run(line.split(" ", -1))).isEqualTo(Exit.UNWRITABLE);
    assertThat(err.toString(StandardCharsets.UTF_8))
        .contains("standard output could not be written");
  }

  /** A home of which no gap as found is entered, either. */
  private static final String OTHER = "sample-configs/good/tanners-row.json";

  private static final String FAILS_ON_SMALL_GAPS =
      """
      package house;
      import deadband.topics.thresholds.RelayGap;
      rule "fails-on-small-gaps"
          @consequence("query")
          @title("Fails on some homes")
          @why("To see what becomes of the others.")
      when
          $gap : RelayGap( width_kW.isBelow( 0.5 ) )
      then
          throw new StackOverflowError("round\\nand round");
      end
      """;

  @Test
  void oneFileThatFailsDoesNotLoseTheOthers() throws IOException {
    Path rules = Files.createDirectory(folder.resolve("rules"));
    Files.writeString(rules.resolve("house.drl"), FAILS_ON_SMALL_GAPS);
    String[] words = {"check", "--rules", rules.toString(), "--format", "text", FAULTY, OTHER};
    CommandLineRun text = CommandLineRun.of(words);
    words[4] = "jsonl";
    CommandLineRun lines = CommandLineRun.of(words);

    assertThat(text.exit()).isEqualTo(Exit.FAULT);
    assertThat(text.out().lines().findFirst().orElse(""))
        .startsWith(FAULTY + ": not judged, a house rule failed while it was run: ")
        .contains("fails-on-small-gaps", "round");
    assertThat(text.out()).contains("READY FOR SIGN-OFF").doesNotContain("\tat ");
    assertThat(text.err())
        .contains("2 files: 1 ready for sign-off, 1 not judged for a fault of the program");
    assertThat(lines.exit()).isEqualTo(Exit.FAULT);
    assertThat(lines.out().lines().toList().get(0)).contains("\"problem\":\"fault\"");
    assertThat(lines.out().lines().toList().get(1)).contains("\"verdict\":\"ready\"");
  }

  @Test
  void aFaultIsOneLineThatCanBeReported() {
    RuntimeException fault =
        new IllegalStateException(new IllegalArgumentException("no tank\nsecond line"));

    assertThat(Fault.of(fault))
        .startsWith("a fault of the program (IllegalArgumentException at RobustnessTest.java:")
        .contains(": no tank), version ")
        .endsWith("; please report this line together with the file")
        .doesNotContain("second line");
  }

  @Test
  void aFolderTakesJsonInAnyCaseAndSaysWhatItSkipped() throws IOException {
    for (String name : new String[] {"a.json", "b.JSON", "c.Jsonc"}) {
      Files.copy(Path.of(GOOD), folder.resolve(name));
    }
    Files.writeString(folder.resolve("notes.txt"), "");
    Files.createSymbolicLink(folder.resolve("gone.json"), folder.resolve("nowhere"));
    Path deeper = Files.createDirectory(folder.resolve("deeper"));
    for (int i = 0; i < 5; i++) {
      Files.writeString(deeper.resolve(i + ".csv"), "");
    }
    Files.createSymbolicLink(folder.resolve("loop"), folder);
    CommandLineRun run = CommandLineRun.of("check", folder.toString());

    assertThat(run.exit()).isEqualTo(Exit.READY);
    assertThat(run.err().lines())
        .contains(
            "3 files: 3 ready for sign-off",
            folder + ": skipped gone.json (a link to nothing)",
            folder + ": skipped loop (a link to a folder)")
        .anyMatch(line -> line.endsWith(" and 3 more (not .json)"));
  }

  @Test
  void aFileNameIsQuotedForTheShell() {
    Map<String, String> quoted =
        Map.of(
            "plain-1.json", "plain-1.json",
            "two words.json", "'two words.json'",
            "$(reboot).json", "'$(reboot).json'",
            "it's.json", "'it'\\''s.json'",
            "-rf.json", "./-rf.json",
            "a;b&c|d.json", "'a;b&c|d.json'");

    quoted.forEach((name, word) -> assertThat(ShellWord.of(name, false)).contains(word));
  }

  @Test
  void aFileNameIsQuotedForTheOtherShell() {
    assertThat(ShellWord.of("C:\\homes\\two words.json", true))
        .contains("\"C:\\homes\\two words.json\"");
    assertThat(ShellWord.of("C:\\homes\\one.json", true)).contains("C:\\homes\\one.json");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\u202Enosj.exe", "\u001b[2J\u2066", "\u0085a\nb"})
  void nothingThatDrivesATerminalIsPrinted(String part) throws IOException {
    Path home = folder.resolve("x" + part + ".json");
    Files.copy(Path.of(FAULTY), home);
    String[][] lines = {
      {"check", home.toString()},
      {"check", folder.toString()},
      {"propose", home.toString(), "--out", home.toString()},
      {"simulate", home.toString(), "--trace", home.resolve("no" + part).toString()},
      {"check", "--as-of", part, home.toString()},
      {"chek" + part},
      {"explain", part},
      {"propose", home.toString(), "--keep", part},
      {"check", home + part},
    };
    for (String[] line : lines) {
      CommandLineRun run = CommandLineRun.of(line);
      assertThat(run.out() + run.err())
          .as(String.join(" ", line))
          .doesNotContain(part)
          .matches(text -> text.chars().allMatch(c -> c == '\n' || c >= ' '));
    }
    assertThat(CommandLineRun.of("check", home.toString()).err())
        .contains("next: deadband propose FILE, the name of which holds characters");
  }

  @Test
  void keepTakesNamesOfTheSetupOnly() {
    CommandLineRun run = CommandLineRun.of("propose", FAULTY, "--keep", "relay.strat_kW");

    assertThat(run.exit()).isEqualTo(Exit.USAGE);
    assertThat(run.err()).contains("no such value", "nearest: relay.start_kW");
    assertThat(CommandLineRun.of("propose", FAULTY, "--keep", "/rely/start_kW").err())
        .contains("nearest: /relay");
    assertThat(CommandLineRun.of("propose", FAULTY, "--keep", "outlets[0].mixed_C").exit())
        .isNotEqualTo(Exit.USAGE);
    assertThat(CommandLineRun.of("propose", FAULTY, "--keep", "outlets[x]").exit())
        .isEqualTo(Exit.USAGE);
  }
}
