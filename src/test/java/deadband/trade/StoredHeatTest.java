package deadband.trade;

import static deadband.trade.OutsideCheck.independent;
import static deadband.trade.OutsideCheck.value;
import static deadband.trade.OutsideCheck.worked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.hummeling.if97.IF97;
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
        worked(
            "heat of a 400 L store, cold to full",
            "none; arithmetic 400 L, 10 to 64 °C = 24.8 kWh, 8.3 h with a 3 kW element",
            Known.COMMON_PRACTICE,
            value("about 25 kWh", 24.8, 0.2, () -> StoredHeat.heat_kWh(400, 10, 64)),
            value(
                "about 8 h, in minutes",
                8.3 * 60,
                3,
                () -> StoredHeat.heatingTime_min(400, 10, 64, 3))),
        independent(
            "heat of a 300 L store by 10 K",
            "trade journal",
            Known.READ,
            value("50 to 60 °C", 3.5, 0.07, () -> StoredHeat.heat_kWh(300, 50, 60))),
        worked(
            "shortest run a tank alone gives, to 2 %",
            "t = V·c·ΔT/P with 1.163 Wh per litre and kelvin",
            Known.DERIVED,
            value("200 L, 5 K, 8 kW", 8.7, 0.18, () -> StoredHeat.heatingTime_min(200, 50, 55, 8)),
            value(
                "250 L, 10 K, 5 kW", 34.9, 0.7, () -> StoredHeat.heatingTime_min(250, 45, 55, 5))),
        worked(
            "top-up of 200 L to 60 °C, to 2 %",
            "account from practice; arithmetic with 1.163 Wh per litre and kelvin",
            Known.DERIVED,
            value("from 55 °C", 1.16, 0.024, () -> StoredHeat.heat_kWh(200, 55, 60)),
            value("from 45 °C", 3.49, 0.07, () -> StoredHeat.heat_kWh(200, 45, 60))),
        independent(
            "diverted energy accepted by 150 L from 55 to 60 °C, sensible part, to 2 %",
            "UK government reference engine's unit test (1 kg a litre)",
            Known.READ,
            value("1 kWh offered", 0.8717, 0.0175, () -> StoredHeat.heat_kWh(150, 55, 60))),
        independent(
            "heat of hot water drawn off, to 1.5 %",
            "unit test of the UK government's calculation engine (1 kg a litre)",
            Known.READ,
            heat(5, 5, 40, 0.20339),
            heat(10, 4, 35, 0.36029),
            heat(15, 5, 37, 0.55787),
            heat(20, 6, 39, 0.76707),
            heat(25, 5, 40, 1.01694),
            heat(30, 4, 38, 1.18547),
            heat(35, 3, 39, 1.46440),
            heat(40, 4, 40, 1.6736)),
        independent(
            "heat of a store by the difference of enthalpies, within 0.15 %",
            "IAPWS-IF97 by com.hummeling:if97:1.0.5, at 0.3 MPa, run beside the test",
            Known.DERIVED,
            byEnthalpy(150, 10, 45),
            byEnthalpy(180, 15, 55),
            byEnthalpy(200, 10, 60),
            byEnthalpy(250, 45, 50),
            byEnthalpy(300, 50, 62),
            byEnthalpy(400, 5, 65),
            byEnthalpy(500, 60, 70),
            byEnthalpy(150, 20, 80)),
        independent(
            "energy to heat water, to 2.5 %",
            "pages that teach the sum, 4.2 kJ a litre and kelvin",
            Known.READ,
            value("20 L, 20 to 100 °C [kWh]", 1.867, 0.047, () -> StoredHeat.heat_kWh(20, 20, 100)),
            value("10 L, 25 to 70 °C [kWh]", 0.525, 0.013, () -> StoredHeat.heat_kWh(10, 25, 70)),
            value(
                "10 L, 25 to 70 °C, 4.5 kW [min]",
                7,
                0.2,
                () -> StoredHeat.heatingTime_min(10, 25, 70, 4.5)),
            value(
                "a cubic metre by 1 K from 10 °C [kWh]",
                1.1628,
                0.003,
                () -> StoredHeat.heat_kWh(1000, 10, 11)),
            value(
                "125 L, 10 to 65 °C, 3 kW, about [h]",
                2.5,
                0.15,
                () -> StoredHeat.heatingTime_min(125, 10, 65, 3) / 60)));
  }

  private static OutsideCheck.Value heat(
      double volume_L, double from_C, double to_C, double expected_kWh) {
    return value(
        volume_L + " L, " + from_C + " to " + to_C + " °C [kWh]",
        expected_kWh,
        expected_kWh * 0.015,
        () -> StoredHeat.heat_kWh(volume_L, from_C, to_C));
  }

  /** Water content counted at the mean temperature, as ours is. */
  private static OutsideCheck.Value byEnthalpy(double volume_L, double from_C, double to_C) {
    IF97 water = new IF97(IF97.UnitSystem.DEFAULT);
    double mass_kg = volume_L / 1000 * water.densityPT(0.3, (from_C + to_C) / 2 + 273.15);
    double expected_kWh =
        mass_kg
            * (water.specificEnthalpyPT(0.3, to_C + 273.15)
                - water.specificEnthalpyPT(0.3, from_C + 273.15))
            / 3600;
    return value(
        volume_L + " L, " + from_C + " to " + to_C + " °C [kWh]",
        expected_kWh,
        expected_kWh * 0.0015,
        () -> StoredHeat.heat_kWh(volume_L, from_C, to_C));
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
}
