package deadband.trade;

import static deadband.trade.OutsideCheck.independent;
import static deadband.trade.OutsideCheck.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import com.hummeling.if97.IF97;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class WaterTest {
  private static final String IF97_LIBRARY = "IAPWS-IF97 by com.hummeling:if97:1.0.5, at 0.3 MPa";
  private static final IF97 REFERENCE = new IF97(IF97.UnitSystem.DEFAULT);

  static List<OutsideCheck> outside() {
    return List.of(
        independent(
            "density of water",
            IF97_LIBRARY,
            Known.DERIVED,
            value("10 °C", 999.796, 0.01, () -> Water.density_kg_per_m3(10)),
            value("40 °C", 992.311, 0.01, () -> Water.density_kg_per_m3(40)),
            value("50 °C", 988.134, 0.01, () -> Water.density_kg_per_m3(50)),
            value("60 °C", 983.297, 0.01, () -> Water.density_kg_per_m3(60)),
            value("65 °C", 980.653, 0.01, () -> Water.density_kg_per_m3(65))),
        independent(
            "specific heat of water",
            IF97_LIBRARY,
            Known.DERIVED,
            value("60 °C", 4.1823, 0.0002, () -> Water.specificHeat_kJ_per_kgK(60))),
        independent(
            "density of water every 10 K, within 0.05 %",
            IF97_LIBRARY + ", run beside the test", Known.DERIVED, everyTenKelvin(true)),
        independent(
            "specific heat of water every 10 K, within 0.05 %",
            IF97_LIBRARY + ", run beside the test", Known.DERIVED, everyTenKelvin(false)),
        independent(
            "density of water in a handbook, within 0.02 %",
            HANDBOOK,
            Known.SECOND_HAND,
            density(10, 999.7026),
            density(15, 999.1026),
            density(20, 998.2071),
            density(22, 997.7735),
            density(25, 997.0479),
            density(30, 995.6502),
            density(40, 992.2),
            density(60, 983.2),
            density(80, 971.8),
            density(100, 958.4)),
        independent(
            "specific heat of water in a handbook, within 0.1 %",
            HANDBOOK,
            Known.SECOND_HAND,
            heat(10, 4.1921),
            heat(20, 4.1818),
            heat(30, 4.1784),
            heat(40, 4.1785),
            heat(50, 4.1806),
            heat(60, 4.1843),
            heat(70, 4.1895),
            heat(80, 4.1963),
            heat(90, 4.2050),
            heat(100, 4.2159)));
  }

  private static final String HANDBOOK = "handbook tables at 1 bar, as an open page gives them";

  private static OutsideCheck.Value density(double t, double expected) {
    return value(t + " °C [kg/m³]", expected, expected * 0.0002, () -> Water.density_kg_per_m3(t));
  }

  private static OutsideCheck.Value heat(double t, double expected) {
    return value(
        t + " °C [kJ/kgK]", expected, expected * 0.001, () -> Water.specificHeat_kJ_per_kgK(t));
  }

  private static List<OutsideCheck.Value> everyTenKelvin(boolean density) {
    List<OutsideCheck.Value> values = new ArrayList<>();
    for (int t = 0; t <= 100; t += 10) {
      double at = t;
      double expected = density ? if97Density(at, 0.3) : specificHeat(at, 0.3);
      values.add(
          value(
              t + " °C",
              expected,
              expected * 0.0005,
              () -> density ? Water.density_kg_per_m3(at) : Water.specificHeat_kJ_per_kgK(at)));
    }
    return values;
  }

  private static double if97Density(double temperature_C, double pressure_MPa) {
    return REFERENCE.densityPT(pressure_MPa, temperature_C + 273.15);
  }

  private static double specificHeat(double temperature_C, double pressure_MPa) {
    return REFERENCE.isobaricHeatCapacityPT(pressure_MPa, temperature_C + 273.15);
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  @Test
  @Tag("outside")
  void staysWithinTheStatedErrorOverTheWholeRange() {
    for (int i = 0; i <= 2000; i++) {
      double t = i / 20.0;
      assertThat(Water.density_kg_per_m3(t))
          .as("density at %s °C", t)
          .isCloseTo(if97Density(t, 0.3), withPercentage(0.0006));
      assertThat(Water.specificHeat_kJ_per_kgK(t))
          .as("specific heat at %s °C", t)
          .isCloseTo(specificHeat(t, 0.3), withPercentage(0.0031));
    }
  }

  @Test
  @Tag("outside")
  void pressureOfAStoreMovesNeitherByMoreThanTheStatedError() {
    for (double pressure_MPa : new double[] {0.15, 0.6}) {
      for (int t = 0; t <= 100; t++) {
        assertThat(Water.density_kg_per_m3(t))
            .isCloseTo(if97Density(t, pressure_MPa), withPercentage(0.05));
        assertThat(Water.specificHeat_kJ_per_kgK(t))
            .isCloseTo(specificHeat(t, pressure_MPa), withPercentage(0.05));
      }
    }
  }

  @Test
  void densityFallsFromFourDegreesUp() {
    for (int t = 5; t <= 100; t++) {
      assertThat(Water.density_kg_per_m3(t)).isLessThan(Water.density_kg_per_m3(t - 1));
    }
    assertThat(Water.density_kg_per_m3(4)).isGreaterThan(Water.density_kg_per_m3(0));
  }

  @Test
  void heatCapacityOfALitreIsDensityTimesSpecificHeat() {
    // 60 °C: 983.297 kg/m³ · 4.1823 kJ/kgK = 4112.4 kJ/m³K = 4.1124 kJ/LK; / 3600 = 0.0011423
    // kWh/LK
    assertThat(Water.heatCapacity_kWh_per_LK(60)).isCloseTo(0.0011423, within(1e-7));
  }

  @Test
  void refusesOutsideItsRange() {
    for (double t : new double[] {-0.01, 100.01, Double.NaN}) {
      assertThatThrownBy(() -> Water.density_kg_per_m3(t))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("water temperature " + t + " °C is outside 0.0 to 100.0 °C");
      assertThatThrownBy(() -> Water.specificHeat_kJ_per_kgK(t))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }
}
