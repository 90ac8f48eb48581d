package deadband.trade;

import static deadband.trade.OutsideCheck.figure;
import static deadband.trade.OutsideCheck.transcribed;
import static deadband.trade.OutsideCheck.value;
import static org.assertj.core.api.Assertions.assertThat;

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
        transcribed(
            "supply of a domestic thermostatic mixing valve",
            "UK TMV2 scheme, conditions of use",
            Valve.TMV2.known(),
            value("hot from [°C]", 55, 0, () -> Valve.TMV2.hotSupply_C().least()),
            value("hot to [°C]", 65, 0, () -> Valve.TMV2.hotSupply_C().most())),
        transcribed(
            "supply of a healthcare thermostatic mixing valve",
            "UK TMV3 scheme, Table 1",
            Valve.TMV3.known(),
            value("hot from [°C]", 52, 0, () -> Valve.TMV3.hotSupply_C().least()),
            value("hot to [°C]", 65, 0, () -> Valve.TMV3.hotSupply_C().most())),
        transcribed(
            "in-line tempering valve at the store",
            "EN 15092:2008, abstract",
            Valve.EN_15092.known(),
            value("hot to [°C]", 90, 0, () -> Valve.EN_15092.hotSupply_C().most())),
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
}
