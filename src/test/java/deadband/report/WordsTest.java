package deadband.report;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.facts.Measure;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quantities are shown no finer than they mean anything. */
class WordsTest {

  @ParameterizedTest
  @CsvSource({
    "3132.1, s, about 52 min",
    "890, s, about 15 min",
    "34, s, about 30 s",
    "9.9, s, under 10 s",
    "2, s, under 10 s",
    "9000, s, over 2 h",
    "2.422, kWh, 2.4 kWh",
    "0, kWh, 0 kWh",
    "0.04, kWh, under 0.1 kWh",
    "18.04, m, 18 m",
    "129.18, min, 2.2 h",
    "120, min, 120 min",
    "92.42, min, 92.4 min",
    "1440, min, 24 h",
    "1, days, 1 day",
    "7, days, 7 days",
    "3, kW, 3.0 kW",
    "0.15, kW, 0.15 kW",
    "60.28, °C, 60.28 °C",
    "15, 1/h, 15"
  })
  void isRounded(double value, String unit, String shown) {
    assertThat(Words.withUnit(value, unit)).isEqualTo(shown);
  }

  @Test
  void neverOneClosures() {
    String template = "{closures} relay closures, {starts} starts; {runs} runs";
    List<Measure> measures =
        List.of(
            Measure.of("closures", 1, ""),
            Measure.of("starts", 11, ""),
            Measure.of("runs", 0.1, ""));
    assertThat(NumberSentence.of(template, measures))
        .isEqualTo("1 relay closure, 11 starts; 0.1 runs");
  }
}
