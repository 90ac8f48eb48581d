package deadband.report;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.judging.Setups;
import deadband.reading.SetupReading;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class NotesTest {

  private static Report report(String text) {
    SetupReading.Read read = Setups.read("test", text);
    return new Report(read.document(), read.setup(), Setups.judge(read));
  }

  private static final String STOPS_ON_IMPORT =
      """
      { "relay": { "drives": "heat pump", "counts": ["export", "immersion"],
                   "start_kW": 1.0, "stop_kW": %s },
        "gridSensor": { "rated_A": 100, "accuracyClass": 1 },
        "heatPump": { "minimumInput_kW": 1.0, "hotWaterInput_kW": 1.0 } }
      """;

  @Test
  void whatMayBeBoughtIsSaidThoughItIsTolerated() {
    assertThat(Notes.of(report(STOPS_ON_IMPORT.formatted("-0.1"))))
        .containsExactly("import while the call is held, below the limit: up to 0.1 kW");
  }

  @Test
  void nothingIsSaidWhereNothingIsBoughtOrAFindingSaysIt() {
    assertThat(Notes.of(report(STOPS_ON_IMPORT.formatted("0")))).isEmpty();
    assertThat(Notes.of(report(STOPS_ON_IMPORT.formatted("-0.4")))).isEmpty();
  }

  @Test
  void anEntryThatNamesACheckAsItWasCalledIsToldItsName() {
    String accepted = "{ \"accepted\": [ { \"check\": \"too-rare\", \"reason\": \"a reason\" } ] }";

    assertThat(Notes.of(report(accepted)))
        .containsExactly("accepted[0].check: too-rare is now called disinfection-too-rare");
  }

  static List<Path> good() {
    return Setups.good();
  }

  /** Whatever the verdict: heat is one control among several, and it is said once. */
  @ParameterizedTest
  @MethodSource("good")
  void everyReportWithATankSaysOnceThatHeatIsOneControlAmongSeveral(Path file) {
    Report report = report(Setups.text(file));

    assertThat(TextReport.of(report, Layout.of(80, false)).replaceAll("\\s+", " "))
        .containsOnlyOnce("heat is one control among several");
    assertThat(JsonReport.of(report, "test", false))
        .containsOnlyOnce("heat is one control among several");
  }
}
