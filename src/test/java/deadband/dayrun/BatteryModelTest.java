package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class BatteryModelTest {
  private static BatteryModel.Spec spec(double stored_kWh, double efficiency, Set<Load> into) {
    return new BatteryModel.Spec(10, stored_kWh, 3, efficiency, Set.of(), into, Line.L1);
  }

  @Test
  void chargesWithinItsPower() {
    assertThat(new BatteryModel(spec(0, 1, Set.of())).charge_kW(5, 1)).isEqualTo(3);
    assertThat(new BatteryModel(spec(0, 1, Set.of())).charge_kW(2, 1)).isEqualTo(2);
    assertThat(new BatteryModel(spec(0, 1, Set.of())).charge_kW(-2, 1)).isZero();
  }

  @Test
  void chargesUntilItIsFull() {
    BatteryModel battery = new BatteryModel(spec(9, 0.8, Set.of()));
    assertThat(battery.charge_kW(3, 1)).isCloseTo(1.25, within(1e-12));
    assertThat(battery.stored_kWh()).isEqualTo(10);
    assertThat(battery.charge_kW(3, 1)).isZero();
  }

  @Test
  void dischargesUntilItIsEmpty() {
    BatteryModel battery = new BatteryModel(spec(4, 1, Set.of()));
    assertThat(battery.discharge_kW(9, 1)).isEqualTo(3);
    assertThat(battery.discharge_kW(9, 1)).isEqualTo(1);
    assertThat(battery.discharge_kW(9, 1)).isZero();
  }

  @Test
  void coversOnlyTheLoadsItMay() {
    BatteryModel battery = new BatteryModel(spec(4, 1, EnumSet.of(Load.HOUSE, Load.CHARGER)));
    assertThat(battery.mayCover_kW(new double[] {0.5, 2, 3, 0.25})).isEqualTo(0.75);
  }

  @Test
  void anEfficiencyOfNothingOrMoreThanAllIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> spec(0, 0, Set.of()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> spec(0, 1.1, Set.of()))
        .withMessageContaining("1.1");
  }
}
