package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sheet that goes to site. */
class SheetTest {

  private static final String GOOD = "sample-configs/good/mill-cottage.json";

  @TempDir private Path folder;

  private static String text(String file) {
    CommandLineRun run = CommandLineRun.with("", Map.of("COLUMNS", "120"), "sheet", file);
    assertThat(run.exit()).isEqualTo(0);
    return run.out().replaceAll("\\s+", " ");
  }

  @Test
  void itGoesFromIsolationToWhoToCall() {
    assertThat(text(GOOD))
        .containsSubsequence(
            "Isolate before opening any cover",
            "Photograph every menu",
            "Photograph dials and wiring under the covers, isolated",
            "Settings: diverter",
            "tank limit (diverter.limit_C): 62 °C",
            "Settings: relay",
            "Settings: heat pump",
            "Tests",
            "How to put it back as found",
            "Who to call");
  }

  /**
   * Pt1000, IEC 60751 (second-hand): 1000 × (1 + 3.9083e-3 × 60 − 5.775e-7 × 3600) = 1232.4 Ω.
   * Element of 3 kW at 240 V on 230 V: 3 × (230/240)² = 2.755 kW, 12.0 A. Element from 50 to 60 °C:
   * 300 L × 1.14 Wh/(L K) × 10 K / 3 kW = 68 min. Element: 240² / 3000 = 19.2 Ω.
   */
  @Test
  void expectedReadingsAreThoseOfThisSetup() {
    assertThat(text(GOOD))
        .contains("display at 60 °C just before: 1232.4 Ω")
        .contains("by about 2.8 kW (12 A)", "about 19.2 Ω, from its rating")
        .contains("closes after 5 min, not before", "opens after 3 min, not before")
        .contains("stops at 63 °C, heats again at 61 °C")
        .containsPattern("holds 60 °C for 60 min; the last 10 K take about 6[89] min")
        .contains("everyday: tank temperature at which it starts", "current sensors 1: what it is")
        .contains("at most 41 °C");
  }

  @Test
  void whatWasFoundIsPutBack() {
    assertThat(text(GOOD)).containsSubsequence("How to put it back", "(relay.start_kW): 3 kW");
  }

  @Test
  void settingsThatForbidSignOffAreNotToBeEntered() {
    assertThat(text("sample-configs/faulty/bath-as-hot-as-the-tank.json"))
        .contains("Not to be entered: the check of this file forbids sign-off.");
    assertThat(text(GOOD)).doesNotContain("Not to be entered");
  }

  @Test
  void whatIsMissingIsToBeFoundOutOnSite() throws IOException {
    String less = Files.readString(Path.of(GOOD)).replace("\"limit_C\": 62, ", "");
    Path file = Files.writeString(folder.resolve("less.json"), less);

    assertThat(text(file.toString()))
        .containsSubsequence("To find out on site", "(diverter.limit_C)", "answer ____");
    assertThat(text(GOOD)).doesNotContain("To find out on site");
  }

  @Test
  void itsPageHasRoomToTickAndToNote() {
    String page = CommandLineRun.of("sheet", "--format=html", GOOD).out();

    assertThat(page).contains("<td class=\"tick\">", "<td class=\"blank\">", "Commissioning sheet");
  }
}
