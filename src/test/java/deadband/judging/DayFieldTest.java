package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Homes whose fault shows only when their days are run, where the data folder is there. */
class DayFieldTest {

  private static Judgement judge(String home) {
    @Nullable String data = System.getProperty("deadband.data");
    Path file = Path.of(data == null ? "" : data, "field", home + ".json");
    assumeTrue(
        data != null && Files.isRegularFile(file),
        "skipped: set -Ddeadband.data to the folder that holds field/");
    return Setups.judge(Setups.read(home, Setups.text(file)));
  }

  @ParameterizedTest
  @CsvSource({
    "single/11-north-roof, WASTE, relay-never-closes",
    "single/03-pv-L2-rest-L1-per-phase, WASTE, relay-never-closes",
    "unsafe/m48, WASTE, call-never-starts-heat-pump",
    "unsafe/m18c, WASTE, diverter-buys-from-grid",
    "unsafe/R15a, WASTE, diverter-buys-from-grid",
    "unsafe/R12, HAZARD, disinfection-window-too-short",
    "unsafe/m04a, HAZARD, disinfection-window-too-short"
  })
  void whatOnlyTheDaysShowIsFound(String home, Consequence consequence, String check) {
    assertThat(judge(home).findings())
        .anyMatch(each -> each.check().name().equals(check) && each.consequence() == consequence);
  }

  private static final Set<String> OF_DAYS =
      Set.of(
          "starts-above-limit",
          "runs-ended-by-timer",
          "runs-below-minimum",
          "bought-on-surplus-call",
          "sun-lost-while-tank-cold",
          "relay-never-closes",
          "call-never-starts-heat-pump",
          "diverter-buys-from-grid",
          "export-limit-stops-diverter",
          "disinfection-never-holds",
          "disinfection-leaves-part-cold",
          "hours-in-growth-band");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "good/g2-canal-terrace-150L",
        "good/g4-polderhuis-battery-charger",
        "good/g6-clonmore-pump-counted",
        "good/mill4450"
      })
  void theDaysOfAGoodHomeAreQuiet(String home) {
    assertThat(judge(home).findings()).noneMatch(each -> OF_DAYS.contains(each.check().name()));
  }

  /** The engineer's own note on this home: ask the tariff. */
  @Test
  void anElementThatGoesFirstIsAQuestion() {
    assertThat(judge("good/g2-canal-terrace-150L").findings())
        .filteredOn(each -> each.check().name().equals("heater-fills-tank-first"))
        .singleElement()
        .returns(Consequence.QUERY, Finding::consequence);
  }
}
