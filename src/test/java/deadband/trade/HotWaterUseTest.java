package deadband.trade;

import static deadband.trade.OutsideCheck.transcribed;
import static deadband.trade.OutsideCheck.value;
import static deadband.trade.OutsideCheck.worked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class HotWaterUseTest {

  static List<OutsideCheck> outside() {
    return List.of(
        worked(
            "hot water used in a day, 25·N + 36",
            "SAP 2012",
            Known.READ,
            value("three people [L]", 111, 1e-12, () -> HotWaterUse.daily_L(3))),
        worked(
            "heat of hot water for three people, month by month",
            "SAP 2012 Tables 1c and 1d, evaluated",
            Known.DERIVED,
            value("January [kWh]", 181.50, 0.005, () -> HotWaterUse.daily_kWh(3, 1) * 31),
            value("July [kWh]", 109.58, 0.005, () -> HotWaterUse.daily_kWh(3, 7) * 31),
            value("December [kWh]", 175.78, 0.005, () -> HotWaterUse.daily_kWh(3, 12) * 31)),
        transcribed(
            "average climate, outdoor temperature and irradiance",
            "Reg. (EU) 814/2013 Annex III",
            Known.READ,
            value("January [°C]", 2.8, 0, () -> AverageClimate.outdoor_C(1)),
            value("July [°C]", 21.0, 0, () -> AverageClimate.outdoor_C(7)),
            value("January [W/m²]", 70, 0, () -> AverageClimate.irradiance_W_per_m2(1)),
            value("July [W/m²]", 232, 0, () -> AverageClimate.irradiance_W_per_m2(7))));
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  /** Data file: SAP 2012 Tables 1c and 1d, and the average climate of 814/2013, all months. */
  @Test
  @Tag("outside")
  void everyMonthOfTheDataFile() {
    DataFile file = DataFile.read("monthly_sap_and_eu_climate.csv");
    assertThat(file.size()).isEqualTo(12);
    for (int row = 0; row < file.size(); row++) {
      int month = row + 1;
      double days = file.number(row, "days");
      assertThat(HotWaterUse.monthFactor(month)).isEqualTo(file.number(row, "SAP2012_T1c_factor"));
      assertThat(HotWaterUse.rise_K(month)).isEqualTo(file.number(row, "SAP2012_T1d_temp_rise_K"));
      assertThat(HotWaterUse.daily_kWh(3, month) * days)
          .isCloseTo(file.number(row, "energy_kWh_month_for_N3"), within(0.0051));
      assertThat(AverageClimate.outdoor_C(month))
          .isEqualTo(file.number(row, "EU814_avg_day_temp_C"));
      assertThat(AverageClimate.irradiance_W_per_m2(month))
          .isEqualTo(file.number(row, "EU814_avg_global_irradiance_W_m2"));
    }
  }

  @Test
  void anEmptyHouseUsesThePartThatDoesNotDependOnPeople() {
    assertThat(HotWaterUse.daily_L(0)).isEqualTo(36);
    assertThatThrownBy(() -> HotWaterUse.daily_L(-1)).hasMessageContaining("occupants");
  }

  @Test
  void monthsRunFromOneToTwelve() {
    assertThatThrownBy(() -> HotWaterUse.monthFactor(0)).hasMessageContaining("month");
    assertThatThrownBy(() -> HotWaterUse.rise_K(13)).hasMessageContaining("month");
    assertThatThrownBy(() -> AverageClimate.outdoor_C(0)).hasMessageContaining("month");
    assertThatThrownBy(() -> AverageClimate.irradiance_W_per_m2(13)).hasMessageContaining("month");
  }

  @Test
  void theFactorsAverageToOne() {
    double sum = 0;
    for (int month = 1; month <= 12; month++) {
      sum += HotWaterUse.monthFactor(month);
    }
    assertThat(sum / 12).isCloseTo(1, within(0.005));
  }
}
