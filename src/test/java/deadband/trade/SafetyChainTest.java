package deadband.trade;

import static deadband.trade.OutsideCheck.check;
import static deadband.trade.OutsideCheck.figure;
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
        figure(SafetyChain.CUT_OUT_USUAL_FROM_C, 80),
        figure(SafetyChain.CUT_OUT_USUAL_TO_C, 89),
        check(
            "opening of a temperature and pressure relief valve",
            "prEN 1490, abstract",
            Known.READ,
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
  void eachBarrierStandsStrictlyBelowTheNext() {
    assertThat(SafetyChain.inOrder(63, 65, 80, 90)).isTrue();
    assertThat(SafetyChain.inOrder(65, 65, 80, 90)).isFalse();
    assertThat(SafetyChain.inOrder(63, 80, 80, 90)).isFalse();
    assertThat(SafetyChain.inOrder(63, 65, 90, 90)).isFalse();
    assertThat(SafetyChain.inOrder(63, 65, 80, 100)).isFalse();
    assertThat(SafetyChain.inOrder(63, 65, 80, 99.9)).isTrue();
  }

  @Test
  void aClassBReliefDoesNotFitAboveAUsualCutOut() {
    assertThat(
            SafetyChain.inOrder(
                63, 65, SafetyChain.CUT_OUT_USUAL_FROM_C.value(), ReliefClass.B.opens_C().least()))
        .isFalse();
    assertThat(
            SafetyChain.inOrder(
                63, 65, SafetyChain.CUT_OUT_USUAL_TO_C.value(), ReliefClass.A.opens_C().least()))
        .isTrue();
  }

  @Test
  void roomBelowTheCutOut() {
    assertThat(SafetyChain.margin_K(80, 63)).isEqualTo(17);
    assertThat(SafetyChain.margin_K(80, 82)).isEqualTo(-2);
    assertThat(SafetyChain.CUT_OUT_MARGIN_K.value()).isEqualTo(10);
    assertThat(SafetyChain.CUT_OUT_MARGIN_K.known()).isEqualTo(Known.MEMORY);
  }
}
