package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;

/** 1.4 to 7 kW, 10 kWh needed, plugged in from 18:00 to 08:00. */
class ChargerTest {
  private static Charger charger(boolean followsSurplus) {
    var spec =
        new Charger.Spec(followsSurplus, 1.4, 7, 10, new Window(1080, 480), Set.of(), Line.L1);
    return new Charger(spec);
  }

  @Test
  void followsSurplusBetweenItsLeastAndGreatestPower() {
    Charger charger = charger(true);
    charger.at(20 * 3600, StepLength.MINUTE);
    assertThat(charger.charge_kW(1.39, 0.1)).isZero();
    assertThat(charger.charge_kW(1.4, 0.1)).isEqualTo(1.4);
    assertThat(charger.charge_kW(5, 0.1)).isEqualTo(5);
    assertThat(charger.charge_kW(9, 0.1)).isEqualTo(7);
  }

  @Test
  void chargesAtFullPowerWhereItDoesNotFollow() {
    Charger charger = charger(false);
    charger.at(20 * 3600, StepLength.MINUTE);
    assertThat(charger.charge_kW(0, 0.1)).isEqualTo(7);
  }

  @Test
  void stopsWhenTheVehicleHasWhatItNeedsAndBeginsAnewTheNextDay() {
    Charger charger = charger(false);
    charger.at(20 * 3600, StepLength.MINUTE);
    assertThat(charger.charge_kW(0, 1)).isEqualTo(7);
    assertThat(charger.charge_kW(0, 1)).isEqualTo(3);
    assertThat(charger.charge_kW(0, 1)).isZero();
    charger.at(18 * 3600, StepLength.MINUTE);
    assertThat(charger.charge_kW(0, 1)).isEqualTo(7);
  }

  @Test
  void takesNothingWhileNoVehicleIsThere() {
    Charger charger = charger(false);
    charger.at(12 * 3600, StepLength.MINUTE);
    assertThat(charger.charge_kW(9, 1)).isZero();
  }
}
