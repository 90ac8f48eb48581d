package deadband.trade;

import static deadband.trade.OutsideCheck.independent;
import static deadband.trade.OutsideCheck.value;
import static deadband.trade.OutsideCheck.worked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class StandingLossTest {
  static List<OutsideCheck> outside() {
    return List.of(
        independent(
            "heat loss coefficient from the 24 h loss",
            "BS EN 12897 Annex B, as used by the UK government engine",
            Known.READ,
            value("1.68 kWh/d", 1.5556, 0.00005, () -> StandingLoss.coefficient_W_per_K(1.68))),
        worked(
            "ecodesign limit of the standing loss",
            "Reg. (EU) 814/2013 Annex II, 16.66 + 8.33·V^0.4 W evaluated",
            Known.DERIVED,
            value("100 L", 1.661, 0.0005, () -> limit_kWh_per_day(100)),
            value("200 L", 2.064, 0.0005, () -> limit_kWh_per_day(200)),
            value("300 L", 2.357, 0.0005, () -> limit_kWh_per_day(300)),
            value("500 L", 2.801, 0.0005, () -> limit_kWh_per_day(500))));
  }

  private static double limit_kWh_per_day(double volume_L) {
    return StandingLoss.perDay_kWh(StandingLoss.ecodesignLimit_W(volume_L));
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  /** Data file: Regulations (EU) 812/2013 and 814/2013, evaluated; two decimals of a watt. */
  @Test
  @Tag("outside")
  void everyLimitInTheDataFile() {
    DataFile file = DataFile.read("standing_loss_limits.csv");
    assertThat(file.size()).isEqualTo(9);
    IntStream.range(0, file.size()).forEach(row -> everyLimitIn(file, row));
  }

  private static void everyLimitIn(DataFile file, int row) {
    double volume_L = file.number(row, "V_litre");
    assertThat(StandingLoss.ecodesignLimit_W(volume_L))
        .isCloseTo(file.number(row, "C_upper_W"), within(0.0051));
    assertThat(limit_kWh_per_day(volume_L))
        .isCloseTo(file.number(row, "ecodesign_max_kWh_day(814/2013)"), within(0.00051));
  }

  @Test
  void aLossIsTheSameAsPowerOrPerDay() {
    // 1.8 kWh in 24 h = 75 W
    assertThat(StandingLoss.power_W(1.8)).isCloseTo(75, within(1e-9));
    assertThat(StandingLoss.perDay_kWh(75)).isCloseTo(1.8, within(1e-12));
    assertThat(StandingLoss.power_W(StandingLoss.coefficient_W_per_K(1.8), 65, 20))
        .isCloseTo(75, within(1e-9));
    assertThat(StandingLoss.power_W(0)).isZero();
    assertThatThrownBy(() -> StandingLoss.power_W(-1)).hasMessageContaining("loss_kWh_per_day");
    assertThatThrownBy(() -> StandingLoss.perDay_kWh(-1)).hasMessageContaining("power_W");
    assertThatThrownBy(() -> StandingLoss.power_W(-1, 60, 20))
        .hasMessageContaining("coefficient_W_per_K");
  }

  @Test
  void aWarmerRoomLosesBackwards() {
    assertThat(StandingLoss.power_W(1.5, 15, 25)).isCloseTo(-15, within(1e-12));
  }

  @Test
  void whatIsKeptAfterATime() {
    // H = 1.5 W/K, C = 0.3 kWh/K, 24 h: exp(−0.0015·24/0.3) = exp(−0.12) = 0.88692
    assertThat(StandingLoss.keptShare(1.5, 0.3, 1440)).isCloseTo(0.88692, within(1e-5));
    assertThat(StandingLoss.keptShare(1.5, 0.3, 0)).isEqualTo(1);
    assertThat(StandingLoss.keptShare(0, 0.3, 1440)).isEqualTo(1);
    assertThatThrownBy(() -> StandingLoss.keptShare(1.5, 0, 1))
        .hasMessageContaining("capacity_kWh_per_K");
    assertThatThrownBy(() -> StandingLoss.keptShare(-1, 1, 1))
        .hasMessageContaining("coefficient_W_per_K");
    assertThatThrownBy(() -> StandingLoss.keptShare(1, 1, -1)).hasMessageContaining("time_min");
  }

  @Test
  void refusesVolumesTheRegulationDoesNotSpeakOf() {
    assertThat(StandingLoss.ecodesignLimit_W(2000)).isPositive();
    assertThatThrownBy(() -> StandingLoss.ecodesignLimit_W(2001))
        .hasMessageContaining("storage volume 2001.0 L is outside");
    assertThatThrownBy(() -> StandingLoss.ecodesignLimit_W(0)).hasMessageContaining("0.0 L");
  }
}
