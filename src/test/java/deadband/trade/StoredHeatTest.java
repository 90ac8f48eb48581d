package deadband.trade;

import static deadband.trade.OutsideCheck.check;
import static deadband.trade.OutsideCheck.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class StoredHeatTest {

  static List<OutsideCheck> outside() {
    // The rounder sources take 1 kg and 1.163 Wh/K for a litre; hot water holds 1 to 2 % less.
    return List.of(
        check(
            "heat of a 400 L store, cold to full",
            "none; arithmetic 400 L, 10 to 64 °C = 24.8 kWh, 8.3 h with a 3 kW element",
            Known.COMMON_PRACTICE,
            value("about 25 kWh", 24.8, 0.2, () -> StoredHeat.heat_kWh(400, 10, 64)),
            value(
                "about 8 h, in minutes",
                8.3 * 60,
                3,
                () -> StoredHeat.heatingTime_min(400, 10, 64, 3))),
        check(
            "heat of a 300 L store by 10 K",
            "trade journal",
            Known.READ,
            value("50 to 60 °C", 3.5, 0.07, () -> StoredHeat.heat_kWh(300, 50, 60))),
        check(
            "shortest run a tank alone gives, to 2 %",
            "t = V·c·ΔT/P with 1.163 Wh per litre and kelvin",
            Known.DERIVED,
            value("200 L, 5 K, 8 kW", 8.7, 0.18, () -> StoredHeat.heatingTime_min(200, 50, 55, 8)),
            value(
                "250 L, 10 K, 5 kW", 34.9, 0.7, () -> StoredHeat.heatingTime_min(250, 45, 55, 5))),
        check(
            "top-up of 200 L to 60 °C, to 2 %",
            "account from practice; arithmetic with 1.163 Wh per litre and kelvin",
            Known.DERIVED,
            value("from 55 °C", 1.16, 0.024, () -> StoredHeat.heat_kWh(200, 55, 60)),
            value("from 45 °C", 3.49, 0.07, () -> StoredHeat.heat_kWh(200, 45, 60))),
        check(
            "diverted energy accepted by 150 L from 55 to 60 °C, sensible part, to 2 %",
            "UK government reference engine's unit test (1 kg a litre)",
            Known.READ,
            value("1 kWh offered", 0.8717, 0.0175, () -> StoredHeat.heat_kWh(150, 55, 60))));
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  @Test
  void handWorked() {
    // 300 L, 10 to 60 °C, properties at 35 °C: 994.1 kg/m³ · 4.1777 kJ/kgK = 4153 kJ/m³K;
    // 0.3 m³ · 4153 · 50 K = 62 296 kJ = 17.304 kWh; at 7 kW 148.3 min
    assertThat(StoredHeat.heat_kWh(300, 10, 60)).isCloseTo(17.304, within(0.01));
    assertThat(StoredHeat.heatingTime_min(300, 10, 60, 7)).isCloseTo(148.3, within(0.1));
  }

  @Test
  void noDifferenceNoHeat() {
    assertThat(StoredHeat.heat_kWh(300, 50, 50)).isZero();
    assertThat(StoredHeat.heatingTime_min(300, 50, 50, 3)).isZero();
  }

  @Test
  void coolingIsNegativeAndTakesNoHeatingTime() {
    assertThat(StoredHeat.heat_kWh(300, 60, 50)).isEqualTo(-StoredHeat.heat_kWh(300, 50, 60));
    assertThat(StoredHeat.heatingTime_min(300, 60, 50, 3)).isZero();
  }

  @Test
  void heatRisesWithTemperatureAndVolume() {
    for (int t = 11; t <= 100; t++) {
      assertThat(StoredHeat.heat_kWh(200, 10, t))
          .isGreaterThan(StoredHeat.heat_kWh(200, 10, t - 1));
    }
    assertThat(StoredHeat.heat_kWh(400, 10, 60))
        .isCloseTo(2 * StoredHeat.heat_kWh(200, 10, 60), within(1e-12));
  }

  @Test
  void layersOfOneTemperatureHoldWhatAMixedStoreHolds() {
    double[] layers = {55, 55, 55, 55};
    assertThat(StoredHeat.heat_kWh(200, layers, 10))
        .isCloseTo(StoredHeat.heat_kWh(200, 10, 55), within(1e-12));
  }

  @Test
  void layersAddUp() {
    assertThat(StoredHeat.heat_kWh(200, new double[] {20, 60}, 10))
        .isCloseTo(
            StoredHeat.heat_kWh(100, 10, 20) + StoredHeat.heat_kWh(100, 10, 60), within(1e-12));
    assertThatThrownBy(() -> StoredHeat.heat_kWh(200, new double[0], 10))
        .hasMessageContaining("number of layers");
  }

  @Test
  void temperatureAfterHeatingUndoesHeat() {
    for (double to = 0; to <= 100; to += 2.5) {
      double heat_kWh = StoredHeat.heat_kWh(180, 40, to);
      assertThat(StoredHeat.temperatureAfter_C(180, 40, heat_kWh)).isCloseTo(to, within(1e-9));
    }
  }

  @Test
  void refusesHeatThatWouldBoilOrFreezeTheWater() {
    assertThatThrownBy(() -> StoredHeat.temperatureAfter_C(100, 60, 100))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("is outside 0.0 to 100.0 °C");
    assertThatThrownBy(() -> StoredHeat.temperatureAfter_C(100, 60, -100))
        .hasMessageContaining("is outside");
    assertThatThrownBy(() -> StoredHeat.temperatureAfter_C(0, 60, 1))
        .hasMessageContaining("volume_L");
    assertThatThrownBy(() -> StoredHeat.temperatureAfter_C(100, 60, Double.NaN))
        .hasMessageContaining("heat_kWh");
  }

  @Test
  void refusesWhatIsNoStore() {
    assertThatThrownBy(() -> StoredHeat.heat_kWh(0, 10, 60)).hasMessageContaining("volume_L");
    assertThatThrownBy(() -> StoredHeat.heat_kWh(100, -1, 60)).hasMessageContaining("-1.0");
    assertThatThrownBy(() -> StoredHeat.heat_kWh(100, 10, 101)).hasMessageContaining("101.0");
    // the mean of -20 and 80 °C lies in the range, the ends decide
    assertThatThrownBy(() -> StoredHeat.heat_kWh(100, -20, 80)).hasMessageContaining("-20.0");
    assertThatThrownBy(() -> StoredHeat.heat_kWh(100, 20, 110)).hasMessageContaining("110.0");
    assertThatThrownBy(() -> StoredHeat.heatingTime_min(100, 10, 60, 0))
        .hasMessageContaining("power_kW");
  }

  @Test
  void waterDrawnForUsefulHeat() {
    // 5.845 kWh of profile M from 55 °C and cold 10: at 32.5 °C 994.9 · 4.178 / 3600 = 1.1547
    // Wh/LK;
    // 5845 / (1.1547 · 45) = 112.5 L
    assertThat(StoredHeat.drawn_L(5.845, 55, 10)).isCloseTo(112.5, within(0.1));
    assertThat(StoredHeat.drawn_L(0, 55, 10)).isZero();
    assertThatThrownBy(() -> StoredHeat.drawn_L(1, 10, 10)).hasMessageContaining("hot_C");
    assertThatThrownBy(() -> StoredHeat.drawn_L(-1, 55, 10)).hasMessageContaining("heat_kWh");
  }

  @Test
  void deliverableAtForty() {
    // 200 L at 60 °C with cold of 10 °C: 200 · 50/30 = 333.3 L at 40 °C
    assertThat(StoredHeat.deliverable_L(200, 60, 40, 10)).isCloseTo(333.333, within(0.001));
    // at exactly the tap's temperature the store itself
    assertThat(StoredHeat.deliverable_L(200, 40, 40, 10)).isCloseTo(200, within(1e-9));
    // colder: nothing
    assertThat(StoredHeat.deliverable_L(200, 39.99, 40, 10)).isZero();
    assertThatThrownBy(() -> StoredHeat.deliverable_L(200, 60, 10, 10))
        .hasMessageContaining("mixed_C");
    assertThatThrownBy(() -> StoredHeat.deliverable_L(0, 60, 40, 10))
        .hasMessageContaining("volume_L");
  }

  @Test
  void deliverableCountsOnlyLayersThatAreWarmEnough() {
    // two layers of 100 L: 60 °C gives 166.7 L at 40 °C, 35 °C gives none
    assertThat(StoredHeat.deliverable_L(200, new double[] {35, 60}, 40, 10))
        .isCloseTo(166.667, within(0.001));
    assertThatThrownBy(() -> StoredHeat.deliverable_L(200, new double[0], 40, 10))
        .hasMessageContaining("number of layers");
  }
}
