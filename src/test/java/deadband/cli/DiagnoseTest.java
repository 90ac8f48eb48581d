package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code deadband diagnose}, as its users run it. */
class DiagnoseTest {

  private static final String HOME = "sample-configs/faulty/stop-just-under-start.json";
  private static final String GOOD = "sample-configs/good/orchard-end.json";

  @TempDir private Path folder;

  private static CommandLineRun diagnose(String... more) {
    String[] all = new String[more.length + 3];
    all[0] = "diagnose";
    all[1] = "--as-of";
    all[2] = "2026-05-31";
    System.arraycopy(more, 0, all, 3, more.length);
    return CommandLineRun.of(all);
  }

  /** A clear day on which the heat pump runs 10 min and rests 12 from ten to three. */
  private String hunting(int interval_min, boolean ownColumn) throws IOException {
    StringBuilder csv = new StringBuilder("time,grid (W),pv (W)");
    csv.append(ownColumn ? ",heat pump (W),immersion (W)\n" : "\n");
    for (int minute = 0; minute < 1440; minute += interval_min) {
      double pv = 0;
      double pump = 0;
      for (int at = minute; at < minute + interval_min; at++) {
        double sun = Math.sin(Math.PI * (at - 360) / 840.0);
        pv += at > 360 && at < 1200 ? 5200 * sun / interval_min : 0;
        pump += (at >= 600 && at < 900 && (at - 600) % 22 < 10 ? 2800 : 12) / (double) interval_min;
      }
      csv.append(
          String.format(
              Locale.ROOT,
              "2026-05-%02dT%02d:%02d:00,%.0f,%.0f",
              21,
              minute / 60,
              minute % 60,
              400 + pump - pv,
              pv));
      csv.append(ownColumn ? String.format(Locale.ROOT, ",%.0f,0%n", pump) : "\n");
    }
    return Files.writeString(folder.resolve("meter-" + interval_min + ownColumn + ".csv"), csv)
        .toString();
  }

  @Test
  void aLogOfAHuntingRelayIsTold() throws IOException {
    CommandLineRun run = diagnose(HOME, "--log", hunting(1, true));

    assertThat(run.exit()).isEqualTo(Exit.VERDICT);
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .containsSubsequence(
            "FAULT LIKELY",
            "readings every 1 min, no gaps",
            "grid (W)",
            "import positive",
            "cannot be seen",
            "14 runs found from the heat pump's own power",
            "gap-below-input",
            "as entered",
            "to confirm",
            "gap-below-heat-pump-draw: relay.stop_kW 2.7 -> 0.1",
            "safety");
  }

  @Test
  void theJsonKeepsToItsSchema() throws IOException {
    CommandLineRun run = diagnose(HOME, "--log", hunting(1, true), "--format", "json");
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(CommandLineRun.of("schema", "diagnosis").out());

    assertThat(schema.validate(run.out(), InputFormat.JSON)).isEmpty();
    assertThat(run.out())
        .contains("\"interval_s\": 60", "\"perDay\"", "\"energy_kWh\"", "\"trigger\": \"relay\"")
        .contains("\"rank\": 1", "\"likelihood\"", "\"tellApart\"", "\"healthy\": false")
        .containsSubsequence("\"cause\": \"gap-below-input\"", "gap-below-heat-pump-draw");
    assertThat(diagnose(HOME, "--log", hunting(1, true), "--format", "json")).isEqualTo(run);
  }

  @Test
  void thePageDrawsTheLogAndItsWorstHour() throws IOException {
    Path page = folder.resolve("page.html");
    CommandLineRun run =
        diagnose(HOME, "--log", hunting(1, true), "--format", "html", "--out", page.toString());

    assertThat(run.exit()).isEqualTo(Exit.VERDICT);
    assertThat(run.out()).isEmpty();
    assertThat(Files.readString(page))
        .contains("default-src 'none'", "fault likely".toUpperCase(Locale.ROOT))
        .contains("14 runs of the heat pump from 2026-05-21 00:00", "3 starts within an hour")
        .contains("dashed: relay start and stop, kW", "gap-below-heat-pump-draw")
        .doesNotContain("<script", "NaN");
    assertThat(diagnose(HOME, "--observed", "3 an hour", "--out", page.toString()).exit())
        .as("a file is not replaced")
        .isEqualTo(Exit.USAGE);
  }

  @Test
  void coarseReadingsNameNoCauseAndSayWhy() throws IOException {
    CommandLineRun run = diagnose(HOME, "--log", hunting(15, true));

    assertThat(run.exit()).isEqualTo(Exit.NOTHING_CHECKED);
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("NOT CLEAR")
        .contains("15-minute readings hide cycles shorter than 30 min")
        .contains("not ranked");
  }

  @Test
  void theLogAloneShowsRunsAndNamesNoCause() throws IOException {
    CommandLineRun run = diagnose("--log", hunting(1, true));

    assertThat(run.exit()).isEqualTo(Exit.NOTHING_CHECKED);
    assertThat(run.out()).contains("14 runs found", "to compare causes, give the setup file too");
  }

  @Test
  void wordsAloneAreCompared() {
    CommandLineRun run =
        diagnose(HOME, "--observed", "3 starts an hour, runs 10 min, sunny, since Tuesday");

    assertThat(run.exit()).isEqualTo(Exit.VERDICT);
    assertThat(run.out()).containsSubsequence("since           Tuesday", "gap-below-input");
  }

  @Test
  void whatIsNotUnderstoodIsSaid() {
    CommandLineRun run = diagnose(HOME, "--observed", "8 starts an hour, green cows");

    assertThat(run.out()).contains("not understood: green cows");
  }

  @Test
  void aPastedTextMayBeTheSetup() {
    CommandLineRun run =
        CommandLineRun.with(
            "relay start 3.0 kW, stop 2.7 kW, heat pump draws 2.8 kW",
            Map.of(),
            "diagnose",
            "-",
            "--observed",
            "3 starts an hour, runs 10 min, sunny");

    assertThat(run.out()).containsSubsequence("understood", "gap-below-input");
  }

  @Test
  void causesAreListed() {
    CommandLineRun run = CommandLineRun.of("diagnose", "--list-causes");

    assertThat(run.exit()).isEqualTo(Exit.READY);
    assertThat(run.out().lines()).hasSize(19).allMatch(line -> line.matches("[a-z-]+ +[A-Z].*"));
  }

  @Test
  void nothingGivenAndUnreadableFilesAreRefused() throws IOException {
    assertThat(CommandLineRun.of("diagnose").exit()).isEqualTo(Exit.USAGE);
    assertThat(diagnose("--log", folder.resolve("none.csv").toString()).exit())
        .isEqualTo(Exit.UNREADABLE);
    assertThat(diagnose("--log", hunting(1, true), "--column", "x=sun").err())
        .contains("one of", "heat-pump");
  }

  @Test
  void aMeterLogIsSimulatedWithoutWhatTheHomeTakes() throws IOException {
    CommandLineRun run = CommandLineRun.of("simulate", GOOD, "--day", hunting(1, true));
    assertThat(run.exit()).isEqualTo(Exit.READY);
    assertThat(run.err())
        .contains("without power input of the heat pump, power of the immersion heater");

    CommandLineRun refused = CommandLineRun.of("simulate", GOOD, "--day", hunting(1, false));
    assertThat(refused.exit()).isEqualTo(Exit.UNREADABLE);
    assertThat(refused.err()).contains("and no power input of the heat pump");
  }
}
