package deadband.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ValidRangeTest {
  private static final ValidRange LIFT_K = new ValidRange("lift", 15, 60, "K");

  @Test
  void bothEndsBelongToIt() {
    assertThat(LIFT_K.holds(15)).isTrue();
    assertThat(LIFT_K.holds(60)).isTrue();
    assertThat(LIFT_K.holds(Math.nextDown(15.0))).isFalse();
    assertThat(LIFT_K.holds(Math.nextUp(60.0))).isFalse();
    assertThat(LIFT_K.holds(Double.NaN)).isFalse();
    assertThat(LIFT_K.check(15)).isEqualTo(15);
    assertThat(LIFT_K.check(37.5)).isEqualTo(37.5);
  }

  @Test
  void namesValueAndRangeWhenItRefuses() {
    assertThatThrownBy(() -> LIFT_K.check(61.5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("lift 61.5 K is outside 15.0 to 60.0 K");
  }

  @Test
  void clampsToTheNearerEnd() {
    assertThat(LIFT_K.clamp(3)).isEqualTo(15);
    assertThat(LIFT_K.clamp(90)).isEqualTo(60);
    assertThat(LIFT_K.clamp(40)).isEqualTo(40);
    assertThatThrownBy(() -> LIFT_K.clamp(Double.NaN)).hasMessage("lift is not a number");
  }

  @Test
  void guardsNameTheValueAndWhatWouldBeRight() {
    assertThat(Require.positive("volume_L", 0.1)).isEqualTo(0.1);
    assertThat(Require.notNegative("power_kW", 0)).isZero();
    assertThat(Require.finite("heat_kWh", -3)).isEqualTo(-3);
    assertThat(Require.above("hot_C", 11, "cold_C", 10)).isEqualTo(11);
    assertThatThrownBy(() -> Require.positive("volume_L", 0))
        .hasMessage("volume_L is 0.0, must be above 0 and finite");
    assertThatThrownBy(() -> Require.positive("volume_L", Double.POSITIVE_INFINITY))
        .hasMessageContaining("finite");
    assertThatThrownBy(() -> Require.notNegative("power_kW", -0.001))
        .hasMessage("power_kW is -0.001, must be 0 or more and finite");
    assertThatThrownBy(() -> Require.notNegative("power_kW", Double.POSITIVE_INFINITY))
        .hasMessageContaining("finite");
    assertThatThrownBy(() -> Require.finite("heat_kWh", Double.NaN))
        .hasMessage("heat_kWh is NaN, must be finite");
    assertThatThrownBy(() -> Require.above("hot_C", 10, "cold_C", 10))
        .hasMessage("hot_C is 10.0, must be above cold_C, which is 10.0");
  }
}
