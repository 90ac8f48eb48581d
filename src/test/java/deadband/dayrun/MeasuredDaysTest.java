package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Measured series through made-up installations: no law breaks. Irradiance NREL MIDC as carried in
 * pvlib-python (BSD-3), AC power PVDAQ system 50 as carried in pvanalytics (MIT), draw-off OpenDHW
 * (MIT).
 */
@Tag("outside")
class MeasuredDaysTest {
  private static final int INSTALLATIONS = 200;

  private static double[] filled(int length, double value) {
    double[] values = new double[length];
    Arrays.fill(values, value);
    return values;
  }

  private static void holdLaws(String name, Day day) {
    Generated made = Generated.forTest(name);
    for (int number = 0; number < INSTALLATIONS; number++) {
      Installation installation = made.installation().build();
      String what = name + " " + number + " " + Generated.seed();
      Laws.hold(installation, 50, day, StepLength.MINUTE, what);
    }
  }

  private static Day day(int start_s, double[] pv_kW, double[] draw_L) {
    double[] house_kW = filled(pv_kW.length, 0.3);
    return new Day(Profile.of(StepLength.MINUTE, start_s, pv_kW, house_kW, draw_L), 10, 8);
  }

  @Test
  void aMeasuredDayOfBrokenCloud() {
    irradiance("ghi_1min_2018-10-14_midc");
  }

  @Test
  void aMeasuredClearAutumnDay() {
    irradiance("ghi_1min_2019-11-15_midc");
  }

  private static void irradiance(String file) {
    double[] sun = Measured.irradiance_W_per_m2(file);
    double[] pv_kW = Arrays.stream(sun).map(each -> 0.006 * each).toArray();
    Household household = Household.of(4, 0.3, 55, 10);
    holdLaws(file, day(0, pv_kW, household.draw_L()));
  }

  @Test
  void twoMeasuredDaysOfAnInverter() {
    double[] pv_kW = Measured.pv_kW();
    holdLaws("pv_ac", day((4 * 60 + 33) * 60, pv_kW, new double[pv_kW.length]));
  }

  /** 200 litres a day on average, over a year of measured draw-off. */
  @Test
  void aMeasuredYearOfDrawOff() {
    double[] draw_L = Measured.draw_L();
    assertThat(Arrays.stream(draw_L).sum() / 365).isCloseTo(200.0, within(0.05));
    Installation installation = new Given().build();
    Day year = day(0, new double[draw_L.length], draw_L);
    Result result = Laws.hold(installation, 56, year, StepLength.MINUTE, "a year of draw-off");
    // 200 L a day from 10 °C to about 55 °C, and 1.8 kWh a day of loss: some 12 kWh a day
    assertThat(result.heatPumpHeat_kWh() / 365).isBetween(10.0, 13.5);
    assertThat(result.coldDraw_L()).isLessThan(0.02 * 200 * 365);
    assertThat(result.immersion_kWh()).isZero();
  }
}
