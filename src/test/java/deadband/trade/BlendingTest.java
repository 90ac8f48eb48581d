package deadband.trade;

import static deadband.trade.OutsideCheck.check;
import static deadband.trade.OutsideCheck.figure;
import static deadband.trade.OutsideCheck.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import deadband.trade.Blending.Valve;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class BlendingTest {

  static List<OutsideCheck> outside() {
    return List.of(
        check(
            "supply of a domestic thermostatic mixing valve",
            "UK TMV2 scheme, conditions of use",
            Valve.TMV2.known(),
            value("hot from [°C]", 55, 0, () -> Valve.TMV2.hotSupply_C().least()),
            value("hot to [°C]", 65, 0, () -> Valve.TMV2.hotSupply_C().most()),
            value("cold to [°C]", 25, 0, () -> Valve.TMV2.coldSupply_C().most())),
        check(
            "supply of a healthcare thermostatic mixing valve",
            "UK TMV3 scheme, Table 1",
            Valve.TMV3.known(),
            value("hot from [°C]", 52, 0, () -> Valve.TMV3.hotSupply_C().least()),
            value("hot to [°C]", 65, 0, () -> Valve.TMV3.hotSupply_C().most()),
            value("cold from [°C]", 5, 0, () -> Valve.TMV3.coldSupply_C().least()),
            value("cold to [°C]", 20, 0, () -> Valve.TMV3.coldSupply_C().most())),
        check(
            "in-line tempering valve at the store",
            "EN 15092:2008, abstract",
            Valve.EN_15092.known(),
            value("hot to [°C]", 90, 0, () -> Valve.EN_15092.hotSupply_C().most()),
            value("delivers from [°C]", 45, 0, () -> Blending.EN_15092_DELIVERY_C.least()),
            value("delivers to [°C]", 65, 0, () -> Blending.EN_15092_DELIVERY_C.most())),
        figure(Blending.ASSUMED_HOT_SUPPLY_C, 65));
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  @Test
  void theAssumedLimitIsTheLowestUpperLimit() {
    double lowest_C =
        Stream.of(Valve.values()).mapToDouble(valve -> valve.hotSupply_C().most()).min().orElse(0);
    assertThat(Blending.ASSUMED_HOT_SUPPLY_C.value()).isEqualTo(lowest_C);
    assertThat(Stream.of(Valve.values()).map(Valve::known)).containsOnly(Known.READ);
  }

  @Test
  void endsThatNoTextStatesAreOpen() {
    assertThat(Valve.EN_15092.coldSupply_C().holds(1)).isTrue();
    assertThat(Valve.EN_15092.coldSupply_C().holds(40)).isTrue();
    assertThat(Valve.EN_15092.hotSupply_C().holds(40)).isTrue();
    assertThat(Valve.TMV2.coldSupply_C().holds(1)).isTrue();
    assertThat(Valve.TMV3.coldSupply_C().holds(4.9)).isFalse();
  }

  @Test
  void mixesByVolume() {
    // 30 L of 60 °C and 20 L of 10 °C: (1800 + 200)/50 = 40 °C
    assertThat(Blending.mixed_C(30, 60, 20, 10)).isCloseTo(40, within(1e-12));
    assertThat(Blending.mixed_C(30, 60, 0, 10)).as("no cold").isEqualTo(60);
    assertThat(Blending.mixed_C(0, 60, 20, 10)).as("no hot").isEqualTo(10);
    assertThatThrownBy(() -> Blending.mixed_C(0, 60, 0, 10)).hasMessageContaining("hot_L + cold_L");
    assertThatThrownBy(() -> Blending.mixed_C(-1, 60, 5, 10)).hasMessageContaining("hot_L");
    assertThatThrownBy(() -> Blending.mixed_C(1, 60, -5, 10)).hasMessageContaining("cold_L");
  }

  @Test
  void hotFractionUndoesTheMixture() {
    // 60 and 10 to 40 °C: 30/50
    assertThat(Blending.hotFraction(60, 40, 10)).isCloseTo(0.6, within(1e-12));
    assertThat(Blending.hotFraction(40, 40, 10)).isEqualTo(1);
    assertThat(Blending.hotFraction(60, 10, 10)).isZero();
    assertThat(Blending.hotFraction(38, 40, 10)).as("too cold to mix").isGreaterThan(1);
    assertThatThrownBy(() -> Blending.hotFraction(10, 40, 10)).hasMessageContaining("hot_C");
  }
}
