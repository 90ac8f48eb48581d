package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pasted text on the command line: judged, saved, and a setup file corrected. */
class PasteTest {

  private static final String MAIL = "sample-configs/pasted/email-from-a-customer.txt";
  private static final String[] CHECK = {"check", "--as-of", "2026-05-31", "--no-day-run"};

  @TempDir private Path folder;

  private static CommandLineRun check(String... more) {
    String[] all = new String[CHECK.length + more.length];
    System.arraycopy(CHECK, 0, all, 0, CHECK.length);
    System.arraycopy(more, 0, all, CHECK.length, more.length);
    return CommandLineRun.of(all);
  }

  @Test
  void anEmailGetsItsVerdictInOneCommand() {
    CommandLineRun run = check(MAIL);

    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out())
        .containsSubsequence(
            "understood      line 8: Site: Fenwick Lock = site.reference Fenwick Lock",
            "not understood  line 1",
            "ambiguous       line 18",
            "diverter.limit_C 60 °C | diverter.limit_C 62 °C?",
            "gap-below-heat-pump-draw",
            "relay.stop_kW 2.9 kW (line 13)");
  }

  @Test
  void inBriefATextSaysHowMuchOfItWasUnderstood() {
    String text = "relay start 3.2 kW, stop 2.9 kW\nBoost start 48 °C\n";
    CommandLineRun run = CommandLineRun.with(text, Map.of(), "check", "--brief", "-");

    assertThat(run.out().lines().findFirst().orElseThrow())
        .isEqualTo("standard input: 2 values understood, 0 lines not understood, 1 ambiguous");
  }

  @Test
  void aSheetTypedAsItStandsGetsTheFaultFirst() {
    String text =
        """
        Cylinder 250 litres, unvented

        PV
         PV array 6 kW peak

        Heat pump
         Power input (hot water) 2.1 kW
         Surplus call: start 50 C, stop 55 C

        Controller
         Relay closes at 2.5 kW surplus
         Relay opens at 2.0 kW surplus
         Relay counts export and immersion
        """;
    CommandLineRun run = CommandLineRun.with(text, Map.of(), "check", "--no-day-run", "-");

    assertThat(run.out())
        .contains("relay.counts [export, immersion]", "0 lines not understood")
        .containsSubsequence("1  DAMAGE", "gap-below-heat-pump-draw", "assumed relay.drives");
  }

  @Test
  void standardInputMayBeText() {
    String text = "relay start 3.2 kW, stop 2.9 kW, heat pump draws 2.6 kW";
    CommandLineRun run = CommandLineRun.with(text, Map.of(), "check", "--no-day-run", "-");

    assertThat(run.out()).contains("3 values understood, 0 lines not understood, 0 ambiguous");
  }

  /**
   * Taken for the starts that the heat pump permits, short-cycling would be held against itself.
   */
  @Test
  void startsOfAComplaintAreNotTakenForThosePermitted() {
    String complaint = "tank 300 L, heat pump takes 2.2 kW, 8 starts an hour";
    String plate = "heat pump: max 3 starts per hour, input 2.2 kW";

    assertThat(CommandLineRun.with(complaint, Map.of(), "check", "--no-day-run", "-").out())
        .contains("1 ambiguous", "heatPump.startsPerHour 8", "observed.startsPerHour 8?")
        .doesNotContain("= heatPump.startsPerHour");
    assertThat(CommandLineRun.with(plate, Map.of(), "check", "--no-day-run", "-").out())
        .contains("heatPump.startsPerHour 3", "0 ambiguous");
  }

  @Test
  void theJsonReportSaysHowEachLineWasUnderstood() {
    String json = check("--format", "json", MAIL).out();

    assertThat(json)
        .containsSubsequence(
            "\"understood\"", "\"line\": 14", "\"/relay/startDelay_min\"", "\"value\": 3")
        .containsSubsequence("\"notUnderstood\"", "\"line\": 21", "Is a 5 min delay better?")
        .containsSubsequence("\"ambiguous\"", "\"choices\"", "diverter.limit_C 60 °C");
  }

  @Test
  void whatWasUnderstoodIsSavedOnceAndReadsTheSame() throws IOException {
    Path saved = folder.resolve("home.json");
    CommandLineRun first = check("--save", saved.toString(), MAIL);
    CommandLineRun again = check("--save", saved.toString(), MAIL);
    CommandLineRun file = check(saved.toString());

    assertThat(first.exit()).isEqualTo(1);
    assertThat(Files.readString(saved))
        .containsPattern("\"startDelay_min\": 3,?  // line 14: start delay 180 s");
    assertThat(again.exit()).isEqualTo(2);
    assertThat(again.err()).contains("already exists; use --overwrite");
    assertThat(file.exit()).isEqualTo(1);
    assertThat(file.out()).contains("gap-below-heat-pump-draw").doesNotContain("understood");
  }

  @Test
  void aSetupFileIsNotSavedAgain() {
    CommandLineRun run =
        check(
            "--save", folder.resolve("x.json").toString(), "sample-configs/good/mill-cottage.json");

    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("is a setup file already");
  }

  @Test
  void aProposalForATextIsWrittenAsASetupFile() throws IOException {
    Path out = folder.resolve("proposed.json");
    CommandLineRun run =
        CommandLineRun.of(
            "propose", "--no-day-run", "--as-of", "2026-05-31", "--out", out.toString(), MAIL);

    assertThat(run.out()).contains("understood      line 8", "relay.stop_kW");
    assertThat(Files.readString(out))
        .startsWith("{")
        .contains("// line 13")
        .doesNotContain("\"stop_kW\": 2.9");
  }

  @Test
  void correctionsAreWrittenBesideTheFileAndShown() throws IOException {
    Path file = folder.resolve("home.json");
    String text = "{ \"relay\": { \"start_kW\": \"3,2 kW\", \"stop_kW\": 0.3 } } // mine\n";
    Files.writeString(file, text);
    CommandLineRun run = check("--fix", file.toString());
    Path fixed = folder.resolve("home.fixed.json");

    assertThat(run.exit()).isEqualTo(3);
    assertThat(run.err())
        .contains("1 correction", "line 1, column 26  /relay/start_kW  \"3,2 kW\" -> 3.2");
    assertThat(Files.readString(fixed)).isEqualTo(text.replace("\"3,2 kW\"", "3.2"));
    assertThat(Files.readString(file)).isEqualTo(text);
    assertThat(check("--fix", file.toString()).exit()).isEqualTo(5);
    assertThat(check("--fix", "--overwrite", file.toString()).exit()).isEqualTo(3);
    assertThat(check(fixed.toString()).exit()).isEqualTo(1);
  }

  @Test
  void nothingIsWrittenWhereNothingIsBeyondDoubt() throws IOException {
    Path file = folder.resolve("home.json");
    Files.writeString(file, "{ \"relay\": { \"start_kW\": 1,500 } }");
    CommandLineRun run = check("--fix", file.toString());

    assertThat(run.err()).contains("nothing in it can be corrected beyond doubt");
    assertThat(folder.resolve("home.fixed.json")).doesNotExist();
  }
}
