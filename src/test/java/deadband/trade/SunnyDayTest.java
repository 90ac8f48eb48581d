package deadband.trade;

import static deadband.trade.OutsideCheck.figure;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class SunnyDayTest {

  static List<OutsideCheck> outside() {
    return List.of(figure(SunnyDay.FULL_SUN_H, 5), figure(SunnyDay.DAYLIGHT_H, 12));
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  @Test
  void handWorked() {
    // 4.0 kW · 5 h − 0.2 kW · 12 h = 20 − 2.4 = 17.6 kWh
    assertThat(SunnyDay.surplus_kWh(4.0, 0.2)).isCloseTo(17.6, within(1e-9));
  }

  @Test
  void aHouseThatTakesItAllLeavesNothing() {
    assertThat(SunnyDay.surplus_kWh(2.4, 1.0)).isZero();
    assertThat(SunnyDay.surplus_kWh(1.0, 1.0)).isZero();
    assertThat(SunnyDay.surplus_kWh(0, 0)).isZero();
  }

  @Test
  void moreModulesLeaveMoreAndAHungrierHouseLess() {
    assertThat(SunnyDay.surplus_kWh(5, 0.3)).isGreaterThan(SunnyDay.surplus_kWh(4, 0.3));
    assertThat(SunnyDay.surplus_kWh(5, 0.4)).isLessThan(SunnyDay.surplus_kWh(5, 0.3));
  }

  /** The clear sky of an equinox at 50° north makes the five hours, with losses of a fifth. */
  @Test
  void aClearDayIsWorthTheFiveHours() {
    double yield_kWh = 0;
    for (double angle_deg = -89; angle_deg <= 89; angle_deg += 1) {
      yield_kWh += 0.8 * tilted_W_per_m2(angle_deg) / 1000 * (1 / 15.0);
    }
    assertThat(yield_kWh).isBetween(5.0, 6.5);
  }

  /** Sun on modules that face south at 35°; at the equinox it turns in one plane. */
  private static double tilted_W_per_m2(double hourAngle_deg) {
    double hour = Math.toRadians(hourAngle_deg);
    double latitude = Math.toRadians(50);
    double elevation_deg = Math.toDegrees(Math.asin(Math.cos(latitude) * Math.cos(hour)));
    double azimuth_deg =
        180 + Math.toDegrees(Math.atan2(Math.sin(hour), Math.sin(latitude) * Math.cos(hour)));
    double global = ClearSky.horizontal_W_per_m2(elevation_deg);
    double diffuse = ClearSky.diffuseShare(ClearSky.clearness(global, elevation_deg, 80));
    return ClearSky.tilted_W_per_m2(
        global,
        diffuse,
        elevation_deg,
        ClearSky.cosIncidence(elevation_deg, azimuth_deg, 35, 180),
        35);
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatThrownBy(() -> SunnyDay.surplus_kWh(-1, 0)).hasMessageContaining("peak_kW");
    assertThatThrownBy(() -> SunnyDay.surplus_kWh(1, -1)).hasMessageContaining("house_kW");
  }
}
