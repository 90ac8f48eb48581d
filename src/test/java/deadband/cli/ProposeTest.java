package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.document.Literal;
import deadband.judging.Setups;
import jakarta.json.Json;
import jakarta.json.JsonObject;
import jakarta.json.JsonReader;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** {@code deadband propose}, as its users run it. */
class ProposeTest {
  private static final String WHISKER = "sample-configs/faulty/stop-just-under-start.json";

  @TempDir private Path folder;

  /** One in four: each is proposed for with its years. */
  static Stream<Path> faulty() {
    List<Path> files = Setups.files("sample-configs/faulty", ".json");
    return IntStream.range(0, files.size()).filter(i -> i % 4 == 0).mapToObj(files::get);
  }

  @Test
  void proposesProvesAndSaysHowFarItCanBeTrusted() {
    CommandLineRun run = CommandLineRun.of("propose", "--as-of", "2026-05-31", WHISKER);

    assertThat(run.exit()).isEqualTo(Exit.READY);
    assertThat(run.out())
        .contains("NOT TO BE SIGNED OFF", "as it is        not to be signed off: 1 damage")
        .contains("after           ready for sign-off: nothing found")
        .contains("relay.stop_kW   2.7 -> 0.1", "safe; clears gap-below-heat-pump-draw")
        .contains("year:", "starts");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void saysWhatStandsInTheWay() {
    CommandLineRun run =
        CommandLineRun.of("propose", "sample-configs/faulty/bath-as-hot-as-the-tank.json");

    assertThat(run.exit()).isEqualTo(Exit.VERDICT);
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("outlet-not-blended): work on site, outlets[0].blended");
  }

  @Test
  void writesTheFileAndLeavesEveryOtherByteAlone() throws IOException {
    Path out = folder.resolve("new.json");
    CommandLineRun.of("propose", WHISKER, "--out", out.toString());
    String before = Files.readString(Path.of(WHISKER));

    assertThat(Files.readString(out)).isEqualTo(before.replace("2.7, \"start", "0.1, \"start"));
    assertThat(folder.toFile().list()).containsExactly("new.json");
  }

  @Test
  void theWrittenFileIsReady() {
    Path out = folder.resolve("new.json");
    CommandLineRun.of("propose", WHISKER, "--out", out.toString());

    assertThat(CommandLineRun.of("check", out.toString()).exit()).isEqualTo(Exit.READY);
  }

  /**
   * RFC 6902 by another's hands: Jakarta JSON Processing applies the patch to the file, comments
   * apart, and comes to what {@code --out} writes.
   */
  @ParameterizedTest
  @MethodSource("faulty")
  void thePatchComesToTheWrittenFile(Path file) throws IOException {
    Path out = folder.resolve("new.json");
    Path patch = folder.resolve("new.patch");
    CommandLineRun.of(
        "propose", file.toString(), "--out", out.toString(), "--patch", patch.toString());

    JsonObject patched =
        Json.createPatch(reader(Files.readString(patch)).readArray()).apply(plain(file));
    assertThat(patched).isEqualTo(plain(out));
  }

  private static JsonReader reader(String text) {
    return Json.createReader(new StringReader(text));
  }

  private static JsonObject plain(Path file) {
    String json =
        Literal.of(Setups.read(file.toString(), Setups.text(file)).document().root()).json();
    return reader(json).readObject();
  }

  @Test
  void keepsWhatIsToBeKept() {
    CommandLineRun run = CommandLineRun.of("propose", WHISKER, "--keep", "relay.stop_kW");

    assertThat(run.out().replaceAll("\\s+", " "))
        .doesNotContain("change relay.stop_kW")
        .contains("gap-below-heat-pump-draw): not applied: relay.stop_kW 2.7 -> 0.1: safe");
  }

  @Test
  void nothingToldIsNothingProposed() {
    assertThat(CommandLineRun.with("{}", Map.of(), "propose", "-").exit())
        .isEqualTo(Exit.NOTHING_CHECKED);
  }
}
