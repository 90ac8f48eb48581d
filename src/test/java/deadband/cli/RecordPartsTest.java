package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Everything that a record holds, found in its page and in its Markdown: a home with a hazard that
 * a setting cures and one that work cures, a question, an assumption, an override, equipment files,
 * an accepted finding and settings as found.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RecordPartsTest {

  private Path home = Path.of("");
  private String page = "";
  private String markdown = "";

  @BeforeAll
  void make(@TempDir Path folder) throws IOException {
    String text = Files.readString(Path.of("sample-configs/good/alder-lodge.json"));
    for (Map.Entry<String, String> each :
        Map.of(
                "\"limit_C\": 62", "\"limit_C\": 67",
                "\"start_C\": 57, \"stop_C\": 62", "\"start_C\": 62, \"stop_C\": 67",
                "{ \"at\": \"bath\", \"blended\": true, \"mixed_C\": 41 }",
                    "{ \"at\": \"bath\", \"blended\": false }",
                "\"ambient_C\": 23,", "",
                "\"exportMargin_kW\": 0,", "",
                "\"facing\": \"checked\"", "\"facing\": \"unchecked\"",
                "\"accepted\": []",
                    "\"accepted\": [ { \"check\": \"sensor-facing-unchecked\", \"reason\":"
                        + " \"Meter cupboard locked.\", \"by\": \"B. Reviewer\", \"on\":"
                        + " \"2026-11-02\", \"until\": \"2027-01-31\" } ]")
            .entrySet()) {
      assertThat(text).contains(each.getKey());
      text = text.replace(each.getKey(), each.getValue());
    }
    home = Files.writeString(folder.resolve("everything.json"), text);
    Path limits =
        Files.writeString(
            folder.resolve("limits.json"),
            "{ \"ownCircuitAbove_L\": { \"value\": 20, \"reason\": \"older circuit, tested\","
                + " \"by\": \"site engineer\" } }");
    page = record("html", limits).replaceAll("<[^>]*>", "\n").replace("&gt;", ">");
    page = page.replace("&#39;", "'").replace("&quot;", "\"").replace("&amp;", "&");
    markdown = record("markdown", limits).replaceAll("\\\\(.)", "$1").replace("&gt;", ">");
  }

  private String record(String format, Path limits) {
    return CommandLineRun.of(
            "check",
            "--as-of=2026-11-27",
            "--format=" + format,
            "--limits=" + limits,
            "--equipment=sample-configs/equipment",
            home.toString())
        .out();
  }

  /** A part of the record with texts of this home that belong to it. */
  record Part(String name, List<String> texts) {
    static Part of(String name, String... texts) {
      return new Part(name, List.of(texts));
    }

    @Override
    public String toString() {
      return name;
    }
  }

  private static Stream<Part> parts() {
    return Stream.of(
        Part.of("verdict", "Alder Lodge", "not to be signed off"),
        Part.of("counts", " found, ", " clear, ", " not judged, ", " not fitted"),
        Part.of("standing after the changes", "With the settings proposed"),
        Part.of(
            "ranked findings",
            "Outlet without mixing valve: water at tank temperature, scald risk",
            "Tank water can exceed the mixing valve's supply limit: scald risk",
            "outlet-not-blended",
            "peak-above-blending-limit"),
        Part.of(
            "the user's lines",
            "diverter.limit_C 67 (line 23)",
            "outlets[0].blended false (line 17)"),
        Part.of(
            "numbers",
            "67.64 °C, maximum tank temperature",
            "65 °C, maximum supply of the mixing valve (blending.hotSupplyMax_C)",
            "44 °C, maximum at that outlet (outletBath_C: UK TMV2 and TMV3 schemes"),
        Part.of("why", "a mixing valve may fail to control"),
        Part.of("changes", "diverter.limit_C   67 -> ", "heatPump.surplus.stop_C   67 -> "),
        Part.of(
            "proof",
            "tried",
            "trade-off; clears this",
            "With the change",
            "day, heat from PV, kWh"),
        Part.of("settings proposed with their meaning", "tank limit", "67 °C", "Tried together: "),
        Part.of(
            "work on site apart from settings",
            "Work on site, apart from settings",
            "Fit a thermostatic mixing valve there"),
        Part.of("open questions", "Open questions", "diverter.ambient_C"),
        Part.of("assumptions", "Assumed", "diverter.exportMargin_kW"),
        Part.of(
            "overrides", "Limits set by the site", "ownCircuitAbove_L", "older circuit, tested"),
        Part.of(
            "equipment files",
            "from equipment file heat-pumps/ground-6kW.json",
            "from equipment file tanks/250L-coil.json",
            "from equipment file controllers/one-phase-with-relay.json",
            "from equipment file valves/mixing-valve-65.json"),
        Part.of("changed since as-found", "changed since as-found: relay.start_kW 2.5 -> 2.8"),
        Part.of(
            "limits used with sources",
            "Limits used",
            "outletBath_C",
            "UK TMV2 and TMV3 schemes",
            "common practice"),
        Part.of(
            "temperature ladder",
            "Stored water, maximum",
            "100 °C",
            "Temperature and pressure relief valve",
            "90 °C",
            "Immersion cut-out",
            "Coil cut-out",
            "80 °C",
            "Immersion thermostat",
            "70 °C",
            "Heat pump, maximum tank temperature",
            "63 °C",
            "Diverter, tank limit",
            "65 to 67 °C",
            "Heat pump, on a surplus call",
            "62 to 67 °C",
            "Heat pump, everyday",
            "45 to 50 °C",
            "Mixing valve, maximum hot supply",
            "65 °C",
            "Disinfection target",
            "Disinfection, minimum",
            "60 °C",
            "Mixed water, shower",
            "Mixed water, basin",
            "40 °C"),
        Part.of(
            "example days",
            "Example days",
            "clear: ",
            "cloud: ",
            "With the settings proposed",
            "disinfection cycle alone: "),
        Part.of(
            "cautions",
            "Isolate, lock off and prove dead before opening any cover",
            "Legionella grows in lukewarm water",
            "Local codes"),
        Part.of("edition, tool and date", "edition 2026-", "Deadband ", "2026-11-27"),
        Part.of("sign block", "Sign-off", "Prepared by", "Reviewed by", "ame", "ignature", "ate"),
        Part.of(
            "accepted findings with reasons",
            "sensor-facing-unchecked",
            "Meter cupboard locked.",
            "B. Reviewer",
            "2026-11-02",
            "2027-01-31"));
  }

  private static void holds(String record, Part part) {
    assertThat(record.toLowerCase(Locale.ROOT))
        .contains(part.texts().stream().map(text -> text.toLowerCase(Locale.ROOT)).toList());
  }

  @ParameterizedTest
  @MethodSource("parts")
  void isInThePage(Part part) {
    holds(page, part);
  }

  @ParameterizedTest
  @MethodSource("parts")
  void isInTheMarkdown(Part part) {
    holds(markdown, part);
  }

  static Stream<String> charts() {
    return Stream.of(
        "Clear day, settings as entered",
        "Clear day, settings proposed",
        "Cloudy day, settings as entered",
        "Cloudy day, settings proposed",
        "Temperatures of the tank");
  }

  @ParameterizedTest
  @MethodSource("charts")
  void thePageDrawsIt(String title) {
    assertThat(page).contains(title);
  }

  @Test
  void bothNameTheFileByItsHash() throws Exception {
    byte[] hash = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(home));
    String sha256 = HexFormat.of().formatHex(hash);
    assertThat(page).contains(sha256);
    assertThat(markdown).contains(sha256);
  }
}
