package deadband.trade;

import static deadband.trade.OutsideCheck.figure;
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

class CompressorTest {

  static List<OutsideCheck> outside() {
    return List.of(
        figure(CompressorTimes.STARTS_PER_HOUR, 3),
        figure(CompressorReach.COIL_AREA_M2, 1.5),
        worked(
            "coil area where 3 m² serve 12 kW",
            "trade, 2 to 3 m² up to 12 kW, evaluated",
            Known.DERIVED,
            value("[m²/kW]", 0.25, 1e-12, () -> CompressorReach.coilArea_m2_per_kW(3, 12))));
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  @Test
  void figuresFromMemoryAreMarked() {
    assertThat(CompressorReach.COIL_AREA_M2_PER_KW.value()).isEqualTo(0.25);
    assertThat(CompressorReach.COIL_AREA_M2_PER_KW.known()).isEqualTo(Known.MEMORY);
  }

  @Test
  void theTankStaysBelowTheFlow() {
    assertThat(CompressorReach.highestTank_C(70, 5)).isEqualTo(65);
    assertThat(CompressorReach.highestTank_C(70, 0)).isEqualTo(70);
    assertThatThrownBy(() -> CompressorReach.highestTank_C(70, -1))
        .hasMessageContaining("flowAboveTank_K");
    assertThatThrownBy(() -> CompressorReach.highestTank_C(Double.NaN, 5))
        .hasMessageContaining("maximumFlow_C");
  }

  @Test
  void outputFallsAsTheFlowNearsItsLimit() {
    assertThat(CompressorReach.outputShare(50, 70, 5)).isEqualTo(1);
    assertThat(CompressorReach.outputShare(65, 70, 5))
        .as("at the highest full output")
        .isEqualTo(1);
    assertThat(CompressorReach.outputShare(67.5, 70, 5)).isCloseTo(0.5, within(1e-12));
    assertThat(CompressorReach.outputShare(70, 70, 5)).isZero();
    assertThat(CompressorReach.outputShare(75, 70, 5)).isZero();
    assertThatThrownBy(() -> CompressorReach.outputShare(50, 70, 0))
        .hasMessageContaining("flowAboveTank_K");
  }

  @Test
  void coilAreaForEachKilowatt() {
    assertThat(CompressorReach.coilArea_m2_per_kW(0, 7)).isZero();
    assertThatThrownBy(() -> CompressorReach.coilArea_m2_per_kW(-1, 7))
        .hasMessageContaining("area_m2");
    assertThatThrownBy(() -> CompressorReach.coilArea_m2_per_kW(1, 0))
        .hasMessageContaining("output_kW");
  }
}
