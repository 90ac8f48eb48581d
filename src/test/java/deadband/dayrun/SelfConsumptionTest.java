package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** PV that loads use at once, worked by hand, netted and line by line. */
class SelfConsumptionTest {

  private static SelfConsumption metered(boolean perPhase) {
    return new SelfConsumption(new SupplyModel.Spec(perPhase, 99, Line.ALL));
  }

  @Test
  void aNettingMeterTakesNoNoticeOfTheLine() {
    SelfConsumption used = metered(false);
    used.begin(Line.L2, 3);
    assertThat(used.use_kW(Line.L1, 2)).isEqualTo(2);
    assertThat(used.use_kW(Line.L3, 2)).as("1 kW is left").isEqualTo(1);
  }

  @Test
  void byPhaseAnElementOnOneLineUsesNothingOfPvOnAnother() {
    SelfConsumption used = metered(true);
    used.begin(Line.L2, 3);
    assertThat(used.use_kW(Line.L1, 2)).isZero();
    assertThat(used.use_kW(Line.L2, 2)).isEqualTo(2);
  }

  @Test
  void aBalancedLoadUsesPvOnlyOnTheLineThatHasIt() {
    SelfConsumption used = metered(true);
    used.begin(Line.L2, 3);
    // 2.4 kW on three lines: 0.8 kW on L2 from PV, 1.6 kW bought on the others
    assertThat(used.use_kW(Line.ALL, 2.4)).isCloseTo(0.8, within(1e-12));
    assertThat(used.use_kW(Line.L2, 9)).as("3 - 0.8 are left").isCloseTo(2.2, within(1e-12));
  }

  @Test
  void eachStepBeginsAnew() {
    SelfConsumption used = metered(true);
    used.begin(Line.ALL, 3);
    assertThat(used.use_kW(Line.L1, 2)).isCloseTo(1, within(1e-12));
    used.begin(Line.L1, 1);
    assertThat(used.use_kW(Line.L2, 2)).isZero();
  }
}
