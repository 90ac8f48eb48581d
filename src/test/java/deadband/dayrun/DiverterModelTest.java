package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Opens at 62, closes at 60 °C; least 0.15 kW, margin 0.1 kW. */
class DiverterModelTest {
  private static DiverterModel diverter(boolean answersDemand) {
    return new DiverterModel(
        new DiverterModel.Spec(62, 60, 0.15, 0.1, answersDemand, 900, Line.L1));
  }

  @Test
  void takesWhatIsLeftAboveItsMargin() {
    assertThat(diverter(true).power_kW(false, 3, 2.1, 2.1)).isEqualTo(2.0);
  }

  @Test
  void takesNoMoreThanTheHeater() {
    assertThat(diverter(true).power_kW(false, 3, 9, 9)).isEqualTo(3);
  }

  @Test
  void takesNothingBelowItsMinimum() {
    assertThat(diverter(true).power_kW(false, 3, 0.24, 0.24)).isZero();
    assertThat(diverter(true).power_kW(false, 3, 0.26, 0.26)).isPositive();
    assertThat(diverter(true).power_kW(false, 3, -4, -4)).isZero();
  }

  /** Behind an export limit it begins only if it sees its margin and its least power. */
  @Test
  void regulatesOnTheExportThatItSees() {
    assertThat(diverter(true).power_kW(false, 3, 4, 0)).as("nothing may be exported").isZero();
    assertThat(diverter(true).power_kW(false, 3, 4, 0.24)).isZero();
    assertThat(diverter(true).power_kW(false, 3, 4, 0.26)).isEqualTo(3);
    assertThat(diverter(true).power_kW(false, 3, 2.1, 1)).as("all but its margin").isEqualTo(2.0);
  }

  @Test
  void aDemandNeedsNoExport() {
    assertThat(diverter(true).power_kW(true, 3, 4, 0)).isEqualTo(3);
  }

  @Test
  void givesFullPowerOnDemandWhereverTheEnergyComesFrom() {
    assertThat(diverter(true).power_kW(true, 3, -4, -4)).isEqualTo(3);
    assertThat(diverter(false).power_kW(true, 3, -4, -4)).isZero();
  }

  @Test
  void stopsAtItsOpeningTemperatureAndStartsAgainAtItsClosingOne() {
    DiverterModel diverter = diverter(true);
    diverter.follow(61.99);
    assertThat(diverter.mayHeat()).isTrue();
    diverter.follow(62);
    assertThat(diverter.mayHeat()).isFalse();
    diverter.follow(60.01);
    assertThat(diverter.mayHeat()).isFalse();
    diverter.follow(60);
    assertThat(diverter.mayHeat()).isTrue();
    assertThat(diverter.power_kW(false, 3, 9, 9)).isEqualTo(3);
  }
}
