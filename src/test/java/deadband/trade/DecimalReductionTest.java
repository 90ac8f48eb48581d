package deadband.trade;

import static deadband.trade.OutsideCheck.transcribed;
import static deadband.trade.OutsideCheck.value;
import static deadband.trade.OutsideCheck.worked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class DecimalReductionTest {
  private static final String BY_LIBRARY =
      "BESMod model library's table, read on straight lines between its points";

  static List<OutsideCheck> outside() {
    return List.of(
        transcribed(
            "decimal reduction time, laboratory",
            "Current Microbiology 1989, chlorine-free water",
            Known.READ,
            value("45 °C", 2500, 1e-9, () -> DecimalReduction.byPaper_min(45)),
            value("50 °C", 380, 1e-9, () -> DecimalReduction.byPaper_min(50)),
            value("55 °C", 13.93, 1e-9, () -> DecimalReduction.byPaper_min(55)),
            value("60 °C", 0.74, 1e-9, () -> DecimalReduction.byPaper_min(60)),
            value("66 °C", 0.45, 1e-9, () -> DecimalReduction.byPaper_min(66))),
        worked(
            "decimal reduction time, an eighth of the time for eight decades",
            "Stout et al. 1986: 25, 10 and 5 min",
            Known.SECOND_HAND,
            value("60 °C", 3.125, 1e-12, () -> DecimalReduction.byStout_min(60)),
            value("70 °C", 1.25, 1e-12, () -> DecimalReduction.byStout_min(70)),
            value("80 °C", 0.625, 1e-12, () -> DecimalReduction.byStout_min(80))),
        worked(
            "decimal reduction time, handbook rule",
            "handbook: D60 = 2 min, z = 5.29 K",
            Known.SECOND_HAND,
            value("60 °C", 2, 1e-12, () -> DecimalReduction.byHandbook_min(60)),
            value("one z above", 0.2, 1e-12, () -> DecimalReduction.byHandbook_min(65.29)),
            value("one z below", 20, 1e-10, () -> DecimalReduction.byHandbook_min(54.71))),
        worked(
            "cautious decimal reduction time",
            BY_LIBRARY + "; from 60.1 °C Stout et al. 1986",
            Known.DERIVED,
            value("60 °C", 3.17, 0.005, () -> DecimalReduction.cautious_min(60)),
            value("65 °C", 2.1875, 1e-9, () -> DecimalReduction.cautious_min(65)),
            value("70 °C", 1.25, 1e-9, () -> DecimalReduction.cautious_min(70))),
        worked(
            "log reduction of the national holds",
            "Stout et al. 1986, straight lines between its points",
            Known.DERIVED,
            value("60 °C 60 min, capped", 8, 0, () -> DecimalReduction.hold_log(60, 60)),
            value("65 °C 4 min", 1.83, 0.005, () -> DecimalReduction.hold_log(65, 4)),
            value("70 °C 2 min", 1.6, 1e-9, () -> DecimalReduction.hold_log(70, 2))),
        worked(
            "log reduction by the handbook rule alone, never printed",
            "handbook: D60 = 2 min, z = 5.29 K",
            Known.DERIVED,
            value("60 °C 60 min", 30, 0.05, () -> 60 / DecimalReduction.byHandbook_min(60)),
            value("65 °C 4 min", 17.6, 0.05, () -> 4 / DecimalReduction.byHandbook_min(65)),
            value("70 °C 2 min", 77.7, 0.05, () -> 2 / DecimalReduction.byHandbook_min(70))));
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  /** Data file: BESMod model library, hours for 90 % reduction. */
  @Test
  @Tag("outside")
  void everyPointOfTheDataFile() {
    DataFile file = DataFile.read("legionella_decimal_reduction_besmod.csv");
    assertThat(file.size()).isEqualTo(12);
    for (int row = 0; row < file.size(); row++) {
      assertThat(DecimalReduction.byLibrary_min(file.number(row, "temp_C")))
          .isCloseTo(file.number(row, "time_for_90pct_reduction_h") * 60, within(1e-9));
    }
  }

  @Test
  void theLongestOfTheSourcesCounts() {
    // 55 °C: paper 13.93, library 16.85, handbook 2·10^(5/5.29) = 17.63
    assertThat(DecimalReduction.byLibrary_min(55)).isCloseTo(16.85, within(0.01));
    assertThat(DecimalReduction.cautious_min(55)).isCloseTo(17.63, within(0.01));
    // 57 °C: paper 13.93 − 2/5·13.19 = 8.654, library 7.37, handbook 7.38
    assertThat(DecimalReduction.cautious_min(57)).isCloseTo(8.654, within(0.001));
    for (double t = 55; t <= 66; t += 0.25) {
      assertThat(DecimalReduction.cautious_min(t))
          .isGreaterThanOrEqualTo(DecimalReduction.byPaper_min(t))
          .isGreaterThanOrEqualTo(DecimalReduction.byHandbook_min(t))
          .isGreaterThanOrEqualTo(DecimalReduction.byLibrary_min(t));
    }
  }

  @Test
  void halfWayBetweenTwoPointsOfATable() {
    // (0.74 + 0.45)/2 at 63 °C, (2500 + 380)/2 at 47.5 °C
    assertThat(DecimalReduction.byPaper_min(63)).isCloseTo(0.595, within(1e-12));
    assertThat(DecimalReduction.byPaper_min(47.5)).isCloseTo(1440, within(1e-9));
  }

  @Test
  void hotterIsNeverSlower() {
    for (double t = 55.1; t <= 100; t += 0.1) {
      assertThat(DecimalReduction.cautious_min(t))
          .isLessThanOrEqualTo(DecimalReduction.cautious_min(t - 0.1));
    }
  }

  @Test
  void aboveTheTablesTheLastValueStands() {
    // Stout et al.: 5 min for eight decades
    assertThat(DecimalReduction.cautious_min(80)).isEqualTo(0.625);
    assertThat(DecimalReduction.cautious_min(100)).isEqualTo(0.625);
    assertThat(DecimalReduction.byStout_min(59.99)).as("says nothing").isZero();
    // 0.005494625 h · 60 = 0.32968 min
    assertThat(DecimalReduction.byLibrary_min(100)).isCloseTo(0.32968, within(1e-5));
    assertThat(DecimalReduction.byLibrary_min(78.13366536545968)).isCloseTo(0.32968, within(1e-5));
  }

  @Test
  void refusesOutsideWhatTheSourcesSay() {
    assertThatThrownBy(() -> DecimalReduction.cautious_min(54.99))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("disinfection temperature 54.99 °C is outside 55.0 to 100.0 °C");
    assertThatThrownBy(() -> DecimalReduction.cautious_min(100.1)).hasMessageContaining("100.1");
    assertThatThrownBy(() -> DecimalReduction.byPaper_min(66.1)).hasMessageContaining("66.1");
    assertThatThrownBy(() -> DecimalReduction.byPaper_min(44.9)).hasMessageContaining("44.9");
    assertThatThrownBy(() -> DecimalReduction.byLibrary_min(45)).hasMessageContaining("45.0");
  }

  @Test
  void nothingIsCreditedBelowFiftyFive() {
    assertThat(DecimalReduction.credited_log(54.999, 1e6)).isZero();
    assertThat(DecimalReduction.hold_log(20, 1e6)).isZero();
    assertThat(DecimalReduction.credited_log(55, 17.6267)).isCloseTo(1, within(1e-4));
    assertThat(DecimalReduction.credited_log(60, 0)).isZero();
    assertThatThrownBy(() -> DecimalReduction.credited_log(60, -1))
        .hasMessageContaining("time_min");
  }
}
