package deadband.trade;

import static deadband.trade.OutsideCheck.figure;
import static deadband.trade.OutsideCheck.transcribed;
import static deadband.trade.OutsideCheck.value;
import static org.assertj.core.api.Assertions.assertThat;

import deadband.trade.SafetyChain.ReliefClass;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class SafetyChainTest {

  static List<OutsideCheck> outside() {
    return List.of(
        figure(SafetyChain.STORED_WATER_C, 100),
        figure(SafetyChain.INDEPENDENT_DEVICES, 2),
        figure(SafetyChain.CUT_OUT_C, 90),
        transcribed(
            "opening of a temperature and pressure relief valve",
            "prEN 1490:2025, abstract",
            ReliefClass.KNOWN,
            value("class A from [°C]", 90, 0, () -> ReliefClass.A.opens_C().least()),
            value("class A to [°C]", 95, 0, () -> ReliefClass.A.opens_C().most()),
            value("class B from [°C]", 75, 0, () -> ReliefClass.B.opens_C().least()),
            value("class B to [°C]", 80, 0, () -> ReliefClass.B.opens_C().most())));
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  @Test
  void roomBelowTheCutOut() {
    assertThat(SafetyChain.CUT_OUT_MARGIN_K.value()).isEqualTo(10);
    assertThat(SafetyChain.CUT_OUT_MARGIN_K.known()).isEqualTo(Known.MEMORY);
  }
}
