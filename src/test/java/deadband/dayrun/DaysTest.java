package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import deadband.dayrun.Surroundings.Source;
import deadband.trade.AverageClimate;
import deadband.trade.StoredHeat;
import deadband.trade.TappingProfile;
import java.time.LocalDate;
import java.time.Year;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The built-in days: clouds, house, taps, months. */
class DaysTest {
  private static final SolarArray ARRAY = new SolarArray(52.3, 35, 180, 8.8, 8, 0.85);
  private static final Household HOUSEHOLD = Household.of(4, 0.4, 56, 10);
  private static final Surroundings SURROUNDINGS = new Surroundings(ARRAY, HOUSEHOLD, Source.AIR);

  /** Lengths of the spans below the given share of the light around them [min]. */
  private static List<Integer> dips(double[] share, double below) {
    List<Integer> dips = new ArrayList<>();
    int length = 0;
    for (double each : share) {
      if (each < below) {
        length++;
      } else if (length > 0) {
        dips.add(length);
        length = 0;
      }
    }
    return dips;
  }

  @Test
  void cloudsComeInDipsOfOneToFiveAndAFewOfFifteenToThirtyMinutes() {
    for (int pattern = 0; pattern <= 366; pattern++) {
      double[] daylight = Arrays.copyOfRange(Sky.BROKEN.share(pattern), 360, 1080);
      List<Integer> dips = dips(daylight, 1);
      dips.remove(dips.size() - 1);
      List<Integer> inner = dips.subList(1, dips.size());
      assertThat(inner)
          .as("pattern " + pattern)
          .allMatch(length -> length <= 5 || (length >= 15 && length <= 30));
      assertThat(inner.stream().filter(length -> length >= 15).count()).isBetween(1L, 5L);
      assertThat(inner.stream().filter(length -> length <= 5).count()).isBetween(5L, 20L);
    }
  }

  @Test
  void theSameNumberGivesTheSameCloudsAndAnotherOthers() {
    assertThat(Clouds.share(7)).isEqualTo(Clouds.share(7)).isNotEqualTo(Clouds.share(8));
    // kept as they were when the pattern was drawn: a change to it is a change to every output
    assertThat(dips(Clouds.share(0), 1)).startsWith(15, 4, 3, 5);
  }

  /** Trade values, section 9: on the measured day the sharpest fall was 38 % of the day's peak. */
  @Tag("outside")
  @Test
  void theSharpestFallIsLikeAMeasuredOne() {
    double sharpest = 0;
    double[] share = Sky.BROKEN.share(0);
    for (int minute = 1; minute < share.length; minute++) {
      sharpest = Math.max(sharpest, share[minute - 1] - share[minute]);
    }
    assertThat(sharpest).isBetween(0.30, 0.46);
    double[] measured = Measured.irradiance_W_per_m2("ghi_1min_2018-10-14_midc");
    double fall_W_per_m2 = 0;
    for (int minute = 1; minute < measured.length; minute++) {
      fall_W_per_m2 = Math.max(fall_W_per_m2, measured[minute - 1] - measured[minute]);
    }
    assertThat(fall_W_per_m2).isCloseTo(339, within(0.5));
    double peak_W_per_m2 = Arrays.stream(measured).max().orElseThrow();
    assertThat(fall_W_per_m2 / peak_W_per_m2).isCloseTo(0.38, within(0.005));
  }

  @Test
  void aDullDayHasAFifthOfTheLight() {
    assertThat(Sky.DULL.share(0)).containsOnly(0.2);
    assertThat(Sky.CLEAR.share(0)).containsOnly(1);
  }

  /** Reg. (EU) 814/2013, Annex III, Table 1 (read): each day sums to its reference energy. */
  @Tag("outside")
  @ParameterizedTest
  @EnumSource(TappingProfile.class)
  void everyTappingDaySumsToItsReferenceEnergy(TappingProfile tapping) {
    Household household = new Household(0.3, tapping, 1, 60, 10);
    double drawn_L = Arrays.stream(household.draw_L()).sum();
    assertThat(StoredHeat.heat_kWh(drawn_L, 10, 60))
        .isCloseTo(tapping.reference_kWh(), within(1e-9));
  }

  /** The L profile's bath at 08:05: 3.605 kWh to 40 °C at 10 L/min is 104 L and lasts 10 min. */
  @Test
  void aDrawOffLastsAsLongAsItsFlowTakes() {
    double[] draw_L = new Household(0.3, TappingProfile.L, 1, 60, 10).draw_L();
    int from = 8 * 60 + 5;
    assertThat(draw_L[from - 1]).isZero();
    assertThat(draw_L[from]).isPositive().isEqualTo(draw_L[from + 9]);
    assertThat(draw_L[from + 10]).isZero();
  }

  @Test
  void occupantsChooseTheProfileAndAVolumeScalesIt() {
    assertThat(Household.of(1, 0.3, 56, 10).tapping()).isEqualTo(TappingProfile.M);
    assertThat(HOUSEHOLD.tapping()).isEqualTo(TappingProfile.L);
    double[] draw_L = HOUSEHOLD.drawing_L(136).draw_L();
    assertThat(Arrays.stream(draw_L).sum()).isCloseTo(136, within(1e-9));
  }

  @Test
  void kettleAndOvenAreStepsOfTwoToThreeKilowattsAndThreeToTenMinutes() {
    double[] load_kW = HOUSEHOLD.load_kW();
    int length = 0;
    int steps = 0;
    for (double load : load_kW) {
      double above_kW = load - 0.4;
      if (above_kW > 1e-9) {
        assertThat(above_kW).isBetween(2.0, 3.0);
        length++;
      } else if (length > 0) {
        assertThat(length).isBetween(3, 10);
        steps++;
        length = 0;
      }
    }
    assertThat(steps).isEqualTo(15);
  }

  /** Reg. (EU) 814/2013, average climate (read): what the reference array gets in each month. */
  @Tag("outside")
  @Test
  void theSkiesOfAMonthGiveTheAverageClimatesIrradiance() {
    SolarArray reference = new SolarArray(50, 45, 180, 1, 10, 1);
    double[] sum_kWh = new double[12];
    Surroundings surroundings = new Surroundings(reference, HOUSEHOLD, Source.AIR);
    List<Day> days = surroundings.year(Year.of(2026)).toList();
    for (int day = 0; day < days.size(); day++) {
      sum_kWh[LocalDate.ofYearDay(2026, day + 1).getMonthValue() - 1] +=
          days.get(day).profile().pv_kWh();
    }
    double year_kWh = 0;
    for (int month = 1; month <= 12; month++) {
      int length = LocalDate.of(2026, month, 1).lengthOfMonth();
      double target_kWh = AverageClimate.irradiance_W_per_m2(month) * 24 * length / 1000;
      assertThat(sum_kWh[month - 1])
          .as("month " + month)
          .isCloseTo(target_kWh, within(0.15 * target_kWh));
      year_kWh += target_kWh;
    }
    assertThat(Arrays.stream(sum_kWh).sum()).isCloseTo(year_kWh, within(0.03 * year_kWh));
  }

  /** SAP 2012 Tables 1c and 1d, Reg. (EU) 814/2013 average climate (read). */
  @Tag("outside")
  @Test
  void aYearHasTheMonthsUseColdWaterAndOutdoorTemperature() {
    List<Day> days = SURROUNDINGS.year(Year.of(2026)).toList();
    assertThat(days).hasSize(365);
    double mean_L = Arrays.stream(HOUSEHOLD.draw_L()).sum();
    assertThat(days.get(0).profile().drawn_L()).isCloseTo(1.10 * mean_L, within(1e-9));
    assertThat(days.get(180).profile().drawn_L()).isCloseTo(0.90 * mean_L, within(1e-9));
    assertThat(days.get(0).source_C()).isEqualTo(2.8);
    assertThat(days.get(200).source_C()).isEqualTo(21.0);
    // July's rise is 30.4 K, January's 41.2 K: the water is 10.8 K warmer
    assertThat(days.get(200).coldWater_C() - days.get(0).coldWater_C())
        .isCloseTo(10.8, within(1e-9));
    double mean_C = days.stream().mapToDouble(Day::coldWater_C).average().orElseThrow();
    assertThat(mean_C).isCloseTo(10, within(1e-9));
  }

  @Test
  void theSouthHasItsSeasonsHalfAYearLater() {
    var array = new SolarArray(-35, 30, 0, 8.8, 8, 0.85);
    Surroundings south = new Surroundings(array, HOUSEHOLD, Source.AIR);
    assertThat(south.winterDate()).isEqualTo(LocalDate.of(2026, 7, 15));
    assertThat(south.springDate()).isEqualTo(LocalDate.of(2026, 10, 21));
    assertThat(south.dull(south.winterDate()).source_C()).isEqualTo(2.8);
    double summer_kWh = south.clear(LocalDate.of(2026, 1, 15)).profile().pv_kWh();
    double winter_kWh = south.clear(south.winterDate()).profile().pv_kWh();
    assertThat(summer_kWh).isGreaterThan(winter_kWh);
  }

  @Test
  void theSkyBrightensFromDullToBrokenToClear() {
    LocalDate date = SURROUNDINGS.springDate();
    double clear_kWh = SURROUNDINGS.clear(date).profile().pv_kWh();
    double cloud_kWh = SURROUNDINGS.cloud(date).profile().pv_kWh();
    double dull_kWh = SURROUNDINGS.dull(date).profile().pv_kWh();
    assertThat(clear_kWh).isGreaterThan(cloud_kWh);
    assertThat(cloud_kWh).isGreaterThan(dull_kWh);
    assertThat(dull_kWh).isPositive();
  }

  @Test
  void brineIsFiveDegreesAllYear() {
    Surroundings ground = new Surroundings(ARRAY, HOUSEHOLD, Source.GROUND);
    assertThat(ground.dull(ground.winterDate()).source_C()).isEqualTo(5);
    assertThat(ground.clear(ground.springDate()).source_C()).isEqualTo(5);
  }
}
