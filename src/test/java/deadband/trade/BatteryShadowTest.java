package deadband.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BatteryShadowTest {

  @Test
  void hidesUpToItsChargePower() {
    assertThat(BatteryShadow.hidden_kW(4, 3)).isEqualTo(3);
    assertThat(BatteryShadow.hidden_kW(2, 3)).isEqualTo(2);
    assertThat(BatteryShadow.hidden_kW(-1, 3)).isZero();
    assertThat(BatteryShadow.hidden_kW(2, 0)).isZero();
    assertThatThrownBy(() -> BatteryShadow.hidden_kW(2, -1)).hasMessageContaining("charge_kW");
  }

  @Test
  void coversWhatTheSurplusLacks() {
    // 2.8 kW against 1 kW of surplus: 1.8 kW are missing
    assertThat(BatteryShadow.covered_kW(2.8, 1, 3)).isCloseTo(1.8, within(1e-12));
    assertThat(BatteryShadow.covered_kW(2.8, 1, 1.5)).isEqualTo(1.5);
    assertThat(BatteryShadow.covered_kW(2.8, 3, 3)).isZero();
  }
}
