package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** 3 kW; thermostat opens at 65, closes 6 K below; cut-out 80 °C. */
class ImmersionModelTest {
  private final ImmersionModel immersion =
      new ImmersionModel(
          new ImmersionModel.Spec(3, 120, 65, 6, 80, List.of(new Window(1320, 360))));

  @Test
  void theRodThermostatOpensAndClosesAgain() {
    assertThat(immersion.available_kW(64.9)).isEqualTo(3);
    assertThat(immersion.available_kW(65)).isZero();
    assertThat(immersion.available_kW(59.1)).isZero();
    assertThat(immersion.available_kW(59)).isEqualTo(3);
  }

  @Test
  void aTimerFeedsItAtItsHours() {
    assertThat(immersion.isTimed(22 * 3600)).isTrue();
    assertThat(immersion.isTimed(6 * 3600 - 1)).isTrue();
    assertThat(immersion.isTimed(6 * 3600)).isFalse();
  }

  @Test
  void whereNoneIsFittedNoCutOutOpens() {
    ImmersionModel none = new ImmersionModel(ImmersionModel.Spec.none());
    assertThat(none.available_kW(60)).isZero();
    assertThat(none.limited_kW(0, 0)).isZero();
    assertThat(none.cutOutOpened()).isFalse();
  }

  @Test
  void theCutOutDoesNotResetItself() {
    assertThat(immersion.available_kW(80)).isZero();
    assertThat(immersion.available_kW(20)).isZero();
  }
}
