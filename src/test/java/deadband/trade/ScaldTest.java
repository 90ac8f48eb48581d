package deadband.trade;

import static deadband.trade.OutsideCheck.figure;
import static deadband.trade.OutsideCheck.transcribed;
import static deadband.trade.OutsideCheck.value;
import static deadband.trade.OutsideCheck.worked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import deadband.trade.Scald.Outlet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class ScaldTest {

  static List<OutsideCheck> outside() {
    return List.of(
        transcribed(
            "time to a serious burn, table",
            "US CPSC tap-water text",
            Known.SECOND_HAND,
            value("48.9 °C [s]", 300, 1e-9, () -> Scald.byTable_s(48.9)),
            value("54.4 °C [s]", 30, 1e-9, () -> Scald.byTable_s(54.4)),
            value("60 °C [s]", 6, 1e-9, () -> Scald.byTable_s(60)),
            value("65.6 °C [s]", 2, 1e-9, () -> Scald.byTable_s(65.6))),
        worked(
            "time to a serious burn, regression on the data of 1947",
            "PLOS ONE 0254790 Fig. 2 (log base inferred), evaluated",
            Known.DERIVED,
            value("48 °C [s]", 939, 0.5, () -> Scald.byRegression_s(48)),
            value("50 °C [s]", 296, 0.5, () -> Scald.byRegression_s(50)),
            value("52 °C [s]", 97.5, 0.05, () -> Scald.byRegression_s(52)),
            value("55 °C [s]", 19.9, 0.05, () -> Scald.byRegression_s(55))),
        transcribed(
            "outlet maxima downstream of a thermostatic valve",
            "UK TMV2 and TMV3 schemes",
            Known.READ,
            value("bath [°C]", 44, 0, Outlet.BATH::most_C),
            value("shower [°C]", 41, 0, Outlet.SHOWER::most_C),
            value("basin [°C]", 41, 0, Outlet.BASIN::most_C),
            value("bidet [°C]", 38, 0, Outlet.BIDET::most_C)),
        figure(Scald.NEW_DWELLING_BATH_C, 48),
        figure(Scald.AUSTRALIA_C, 50),
        figure(Scald.NEW_ZEALAND_C, 50),
        figure(Scald.FRANCE_C, 50),
        figure(Scald.VULNERABLE_C, 44));
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  @Test
  void theShorterTimeCounts() {
    // 48.9 °C: table 300, regression 555; 55 °C: table 25.2, regression 19.9
    assertThat(Scald.timeToBurn_s(48.9)).isCloseTo(300, within(1e-9));
    assertThat(Scald.timeToBurn_s(55)).isCloseTo(19.9, within(0.05));
    // below the table only the regression speaks
    assertThat(Scald.timeToBurn_s(48)).isCloseTo(939, within(0.5));
    assertThat(Scald.timeToBurn_s(44)).isCloseTo(Scald.byRegression_s(44), within(1e-9));
    assertThat(Scald.timeToBurn_s(60)).isCloseTo(6, within(1e-9));
    assertThat(Scald.timeToBurn_s(90)).isEqualTo(2);
  }

  @Test
  void beyondTheTableTheTimeIsTheMostItCanBe() {
    assertThat(Scald.isAtMost(65.6)).isFalse();
    assertThat(Scald.isAtMost(65.61)).isTrue();
  }

  @Test
  void halfWayInTheTableIsTheGeometricMean() {
    // 57.2 °C: √(30 · 6) = 13.416 s
    assertThat(Scald.byTable_s(57.2)).isCloseTo(13.416, within(0.001));
    // there the regression's last value, at 57 °C, still counts: exp(116.4 − 28.3·ln 57) = 7.26 s
    assertThat(Scald.timeToBurn_s(57.2)).isCloseTo(7.26, within(0.02));
    assertThat(Scald.timeToBurn_s(57.2)).isEqualTo(Scald.byRegression_s(57));
  }

  @Test
  void hotterNeverBurnsMoreSlowly() {
    for (double t = 44.1; t <= 100; t += 0.1) {
      assertThat(Scald.timeToBurn_s(t)).isLessThanOrEqualTo(Scald.timeToBurn_s(t - 0.1));
    }
  }

  @Test
  void refusesOutsideTheSources() {
    assertThatThrownBy(() -> Scald.timeToBurn_s(43.9))
        .hasMessage("water on skin 43.9 °C is outside 44.0 to 100.0 °C");
    assertThatThrownBy(() -> Scald.timeToBurn_s(100.1)).hasMessageContaining("100.1");
    assertThatThrownBy(() -> Scald.byTable_s(48.8)).hasMessageContaining("48.8");
    assertThatThrownBy(() -> Scald.byTable_s(100.1)).hasMessageContaining("100.1");
    assertThatThrownBy(() -> Scald.byRegression_s(57.1)).hasMessageContaining("57.1");
    assertThatThrownBy(() -> Scald.byRegression_s(43.9)).hasMessageContaining("43.9");
  }

  @Test
  void outletsByTheirWord() {
    assertThat(Outlet.named("bath")).contains(Outlet.BATH);
    assertThat(Outlet.named("bidet")).contains(Outlet.BIDET);
    assertThat(Outlet.named("kitchen")).isEmpty();
    assertThat(Outlet.named("Bath")).isEmpty();
  }
}
