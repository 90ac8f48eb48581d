package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Equipment files on the command line: where they are looked for, and what is refused in them. */
class EquipmentTest {

  private static final String PUMP =
      "{ \"heatPump\": { \"hotWaterInput_kW\": 2.4, \"minimumInput_kW\": 1.6 } }";
  private static final String RELAY =
      "\"relay\": { \"drives\": \"heat pump\", \"counts\": [\"export\"], \"start_kW\": 3.0,"
          + " \"stop_kW\": 2.7 }";

  @TempDir private Path folder;

  private Path equipment;

  @BeforeEach
  void makeEquipmentFolder() throws IOException {
    equipment = Files.createDirectories(folder.resolve("equipment/heat-pumps")).getParent();
    write("equipment/heat-pumps/pump.json", PUMP);
  }

  private String write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text).toString();
  }

  private static String naming(String... files) {
    return "{ \"equipment\": [\"" + String.join("\", \"", files) + "\"], " + RELAY + " }";
  }

  private static CommandLineRun check(String... more) {
    return run("", more);
  }

  private static CommandLineRun run(String input, String... more) {
    String[] all = new String[3 + more.length];
    System.arraycopy(new String[] {"check", "--no-day-run", "--as-of=2026-05-31"}, 0, all, 0, 3);
    System.arraycopy(more, 0, all, 3, more.length);
    return CommandLineRun.with(input, Map.of(), all);
  }

  /** 2.4 kW of the data sheet against a gap of 0.3 kW. */
  @Test
  void aFindingSaysWhichDataSheetItRestsOn() throws IOException {
    String home = write("homes/north/home.json", naming("heat-pumps/pump.json"));

    assertThat(check(home).out().replaceAll("\\s+", " "))
        .contains("DAMAGE", "gap-below-heat-pump-draw")
        .contains("from heat-pumps/pump.json: heatPump.hotWaterInput_kW")
        .contains("note 2 values from equipment file heat-pumps/pump.json");
    assertThat(check("--format", "jsonl", home).out())
        .contains(
            "\"equipment\":[{\"file\":\"heat-pumps/pump.json\",\"values\":["
                + "\"/heatPump/minimumInput_kW\",\"/heatPump/hotWaterInput_kW\"]}]")
        .contains(
            "\"fromEquipment\":[{\"file\":\"heat-pumps/pump.json\","
                + "\"values\":[\"/heatPump/hotWaterInput_kW\"]}]");
  }

  @Test
  void whatTheSetupEntersWins() throws IOException {
    String home =
        write(
            "home.json",
            naming("heat-pumps/pump.json")
                .replaceFirst("\\{", "{ \"heatPump\": { \"hotWaterInput_kW\": 0.2 },"));

    assertThat(check(home).out())
        .contains("differs-from-data-sheet", "heatPump.hotWaterInput_kW 0.2 (line 1)")
        .contains("comparison with heat-pumps/pump.json, line 1: 2.4");
  }

  @Test
  void aStreamHasAnEquipmentFolderOnlyByItsOption() {
    String lines = naming("heat-pumps/pump.json") + "\n" + naming("heat-pumps/pump.json") + "\n";

    CommandLineRun without = run(lines, "--jsonl", "--format", "jsonl", "-");
    CommandLineRun with =
        run(lines, "--jsonl", "--format", "jsonl", "--equipment", equipment.toString(), "-");

    assertThat(without.exit()).isEqualTo(Exit.UNREADABLE);
    assertThat(without.out().lines())
        .hasSize(2)
        .allMatch(line -> line.contains("\"no-equipment-folder\""));
    assertThat(with.out().lines())
        .hasSize(2)
        .allMatch(line -> line.contains("gap-below-heat-pump-draw"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../heat-pumps/pump.json",
        "heat-pumps/../../secret.json",
        "/etc/passwd.json",
        "..\\\\secret.json",
        "C:\\\\secret.json",
        "C:secret.json",
        "heat-pumps//pump.json",
        "./heat-pumps/pump.json",
        "heat-pumps/pump.json\\u0000.json",
        ".hidden.json",
        "heat-pumps/pump.txt",
        "heat-pumps",
        ""
      })
  void aNameThatLeadsElsewhereIsNoName(String name) throws IOException {
    write("secret.json", PUMP);
    CommandLineRun run = check("--format", "jsonl", write("home.json", naming(name)));

    assertThat(run.exit()).isEqualTo(Exit.UNREADABLE);
    assertThat(run.out()).contains("\"wrong-kind\"", "\"/equipment/0\"", "inside the equipment");
  }

  @ParameterizedTest
  @ValueSource(strings = {"leak.json", "outside/secret.json"})
  void aLinkOutOfTheFolderIsNotFollowed(String name) throws IOException {
    write("elsewhere/secret.json", PUMP);
    try {
      Files.createSymbolicLink(
          equipment.resolve("leak.json"), folder.resolve("elsewhere/secret.json"));
      Files.createSymbolicLink(equipment.resolve("outside"), folder.resolve("elsewhere"));
    } catch (UnsupportedOperationException | IOException e) {
      assumeTrue(false, "no links here");
    }
    CommandLineRun run = check("--format", "jsonl", write("home.json", naming(name)));

    assertThat(run.exit()).isEqualTo(Exit.UNREADABLE);
    assertThat(run.out()).contains("\"outside-folder\"").doesNotContain("2.4");
  }

  @Test
  void aLinkWithinTheFolderIs() throws IOException {
    try {
      Files.createSymbolicLink(equipment.resolve("same.json"), Path.of("heat-pumps/pump.json"));
    } catch (UnsupportedOperationException | IOException e) {
      assumeTrue(false, "no links here");
    }

    assertThat(check(write("home.json", naming("same.json"))).out())
        .contains("2 values from equipment file same.json");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{ 'relay': { 'start_kW': 3 } } | not-of-type | /relay/start_kW",
        "{ 'diverter': { 'limit_C': 62 } } | not-of-type | /diverter/limit_C",
        "{ 'outlets': [ { 'at': 'bath' } ] } | not-of-type | /outlets",
        "{ 'asFound': { 'settings': { 'tank': { 'volume_L': 200 } } } } | not-of-type | /asFound/settings",
        "{ 'accepted': [] } | not-of-type | /accepted",
        "{ 'equipment': ['heat-pumps/pump.json'] } | not-of-type | /equipment",
        "{ 'heatPump': { 'fitted': false } } | not-of-type | /heatPump/fitted",
        "{ 'heatPump': { 'hotWaterInput': 2 } } | unknown-name | /heatPump/hotWaterInput",
        "{ 'heatPump': { 'hotWaterInput_kW': 2400 } } | unit-doubted | /heatPump/hotWaterInput_kW",
        "{ 'tank': { 'height_mm': 1.5 } } | not-plausible | /tank/height_mm",
        "{ 'tank': { 'height_mm': 1500 | bracket-not-closed | ",
      })
  void whatIsWrongInAnEquipmentFileIsToldWithItsPlace(String text, String kind, String pointer)
      throws IOException {
    write("equipment/wrong.json", text.replace('\'', '"'));
    CommandLineRun run = check("--format", "jsonl", write("home.json", naming("wrong.json")));

    assertThat(run.exit()).isEqualTo(Exit.UNREADABLE);
    assertThat(run.out())
        .contains("\"" + kind + "\"", "wrong.json\"", "\"line\":1,\"column\":")
        .contains(pointer == null ? "" : "\"" + pointer + "\"");
  }

  @Test
  void aMissingFileIsToldWithTheNearestName() throws IOException {
    assertThat(check(write("home.json", naming("heat-pumps/pumpe.json"))).out())
        .contains("line 1, column 17  /equipment/0")
        .contains("There is no such file in the equipment folder")
        .contains("near   heat-pumps/pump.json");
  }

  @Test
  void neitherIsTakenOfTwoSheetsThatDiffer() throws IOException {
    write("equipment/other.json", PUMP.replace("2.4", "2.5"));
    CommandLineRun run = check(write("home.json", naming("heat-pumps/pump.json", "other.json")));

    assertThat(run.exit()).isEqualTo(Exit.UNREADABLE);
    assertThat(run.out())
        .contains("/equipment/1", "heatPump.hotWaterInput_kW 2.5")
        .contains("heat-pumps/pump.json gives 2.4");
  }

  @Test
  void aFileNamedTwiceCountsOnce() throws IOException {
    String pump = "heat-pumps/pump.json";

    assertThat(check(write("home.json", naming(pump, pump))).out())
        .containsOnlyOnce("2 values from equipment file " + pump);
  }

  @Test
  void aFolderOfHomesDoesNotCountItsEquipment() throws IOException {
    write("home.json", naming("heat-pumps/pump.json"));
    CommandLineRun run = check("--brief", folder.toString());

    assertThat(run.err()).contains("skipped equipment (equipment files)");
    assertThat(run.out()).doesNotContain("pump.json");
  }

  @Test
  void anEquipmentFileIsNeverCorrected() throws IOException {
    write("equipment/wrong.json", "{ \"tank\": { \"height_mm\": \"1500\" } }");
    String home = write("home.json", naming("wrong.json"));
    CommandLineRun run = check("--fix", home);

    assertThat(run.err()).contains("nothing in it can be corrected");
    assertThat(folder.resolve("home.fixed.json")).doesNotExist();
  }

  /** What a data sheet says is not written out as if it had been entered. */
  @Test
  void aProposalKeepsTheListAndLeavesTheValuesWhereTheyAre() throws IOException {
    String home = write("home.json", naming("heat-pumps/pump.json"));
    Path out = folder.resolve("changed.json");
    CommandLineRun.of("propose", "--no-day-run", "--out", out.toString(), home);

    assertThat(Files.readString(out))
        .contains("\"equipment\": [\"heat-pumps/pump.json\"]")
        .doesNotContain("2.7", "hotWaterInput_kW");
  }

  @Test
  void comparisonsAndRecordsTakeThem() throws IOException {
    String before = write("before.json", naming("heat-pumps/pump.json"));
    String after =
        write(
            "after.json",
            naming("heat-pumps/pump.json")
                .replace("2.7", "0.2")
                .replaceFirst("\\{", "{ \"heatPump\": { \"minimumInput_kW\": 1.5 },"));

    assertThat(CommandLineRun.of("compare", "--no-day-run", before, after).out())
        .contains(
            "(relay.stop_kW): 2.7 kW -> 0.2 kW", "(heatPump.minimumInput_kW): 1.6 kW -> 1.5 kW")
        .doesNotContain("equipment:");
    assertThat(check("--format", "markdown", before).out())
        .contains("from heat-pumps/pump.json: heatPump.hotWaterInput");
  }

  @Test
  void simulateTakesThem() {
    CommandLineRun run = CommandLineRun.of("simulate", "sample-configs/good/alder-lodge.json");

    assertThat(run.exit()).isEqualTo(Exit.READY);
    assertThat(run.out()).contains("Alder Lodge");
  }
}
