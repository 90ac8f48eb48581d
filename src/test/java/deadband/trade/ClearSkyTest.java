package deadband.trade;

import static deadband.trade.OutsideCheck.independent;
import static deadband.trade.OutsideCheck.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class ClearSkyTest {

  static List<OutsideCheck> outside() {
    return List.of(
        independent(
            "clear-sky irradiance on the horizontal",
            "Haurwitz 1945, as pvlib-python's test of it has it",
            Known.SECOND_HAND,
            value("−20° [W/m²]", 0, 0, () -> ClearSky.horizontal_W_per_m2(-20)),
            value("−0.05° [W/m²]", 0, 0, () -> ClearSky.horizontal_W_per_m2(-0.05)),
            value("5° [W/m²]", 48.6298687941956, 1e-9, () -> ClearSky.horizontal_W_per_m2(5)),
            value("10° [W/m²]", 135.7417, 0.00005, () -> ClearSky.horizontal_W_per_m2(10)),
            value("30° [W/m²]", 487.8941, 0.00005, () -> ClearSky.horizontal_W_per_m2(30)),
            value("50° [W/m²]", 778.7667, 0.00005, () -> ClearSky.horizontal_W_per_m2(50)),
            value("90° [W/m²]", 1035.0920, 0.00005, () -> ClearSky.horizontal_W_per_m2(90))),
        independent(
            "cosine of the sun's angle to a surface",
            "pvlib-python's test of aoi_projection",
            Known.READ,
            value("flat, sun overhead", 1, 1e-7, () -> ClearSky.cosIncidence(90, 0, 0, 0)),
            value(
                "30° south, sun 60° in the south",
                1,
                1e-7,
                () -> ClearSky.cosIncidence(60, 180, 30, 180)),
            value(
                "30° south, sun behind the earth",
                -1,
                1e-7,
                () -> ClearSky.cosIncidence(-60, 0, 30, 180)),
            value(
                "wall north, sun 60° at 60°",
                0.25,
                1e-7,
                () -> ClearSky.cosIncidence(60, 60, 90, 0)),
            value(
                "wall north, sun 60° at 170°",
                -0.4924038,
                1e-7,
                () -> ClearSky.cosIncidence(60, 170, 90, 0))),
        independent(
            "direct part of the global irradiance by Erbs et al. 1982",
            "pvlib-python's erbs with a solar constant of 1366.1, as quoted in an open test",
            Known.SECOND_HAND,
            direct(60, 800, 172, 603.520225),
            direct(45, 500, 100, 191.234892),
            direct(30, 200, 15, 8.177840),
            direct(10, 150, 300, 91.995499),
            direct(70, 950, 200, 786.038260),
            direct(5, 60, 60, 19.772949),
            direct(12, 45, 120, 0.651409)));
  }

  private static OutsideCheck.Value direct(
      double elevation_deg, double global, int dayOfYear, double expected) {
    return value(
        elevation_deg + "°, " + global + " W/m², day " + dayOfYear + " [W/m²]",
        expected,
        1e-6,
        () ->
            global
                * (1
                    - ClearSky.diffuseShare(ClearSky.clearness(global, elevation_deg, dayOfYear))));
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  @Test
  void noSunNoIrradiance() {
    assertThat(ClearSky.horizontal_W_per_m2(0)).isZero();
    assertThat(ClearSky.horizontal_W_per_m2(-20)).isZero();
    assertThat(ClearSky.clearness(100, 0, 100)).isZero();
    assertThat(ClearSky.clearness(100, -5, 100)).isZero();
    assertThat(ClearSky.clearness(0, 40, 100)).isZero();
  }

  @Test
  void irradianceRisesWithTheSunAndStaysBelowWhatComesIn() {
    for (int elevation = 1; elevation <= 90; elevation++) {
      assertThat(ClearSky.horizontal_W_per_m2(elevation))
          .isGreaterThan(ClearSky.horizontal_W_per_m2(elevation - 1))
          .isLessThan(
              ClearSky.extraterrestrial_W_per_m2(180) * Math.sin(Math.toRadians(elevation)));
    }
  }

  @Test
  void theEarthIsNearestInEarlyJanuary() {
    // b = 0 on day 1: 1.00011 + 0.034221 + 0.000719 = 1.03505; · 1366.1 = 1413.98 W/m²
    assertThat(ClearSky.extraterrestrial_W_per_m2(1)).isCloseTo(1413.98, within(0.01));
    // half a year later, b = π: 1.00011 − 0.034221 + 0.000719 = 0.966608; 1320.48 W/m²
    assertThat(ClearSky.extraterrestrial_W_per_m2(184)).isCloseTo(1320.5, within(0.1));
    assertThatThrownBy(() -> ClearSky.extraterrestrial_W_per_m2(0))
        .hasMessageContaining("day of year");
    assertThatThrownBy(() -> ClearSky.extraterrestrial_W_per_m2(367)).hasMessageContaining("367");
  }

  @Test
  void diffuseShareHasThreeParts() {
    assertThat(ClearSky.diffuseShare(0)).isEqualTo(1);
    assertThat(ClearSky.diffuseShare(0.22)).isCloseTo(1 - 0.09 * 0.22, within(1e-12));
    // just above 0.22 the polynomial: 0.9511 − 0.035288 + 0.212379 − 0.177162 + 0.028898 = 0.979927
    assertThat(ClearSky.diffuseShare(0.2200001)).isCloseTo(0.979927, within(1e-5));
    // 0.80: 0.9511 − 0.12832 + 2.80832 − 8.518656 + 5.0528256 = 0.1652696
    assertThat(ClearSky.diffuseShare(0.8)).isCloseTo(0.1652696, within(1e-7));
    assertThat(ClearSky.diffuseShare(0.8000001)).isEqualTo(0.165);
    assertThat(ClearSky.diffuseShare(1)).isEqualTo(0.165);
    assertThatThrownBy(() -> ClearSky.diffuseShare(1.01)).hasMessageContaining("clearness index");
    assertThatThrownBy(() -> ClearSky.diffuseShare(-0.01)).hasMessageContaining("clearness index");
  }

  @Test
  void clearnessIsCappedAtOne() {
    assertThat(ClearSky.clearness(5000, 60, 172)).isEqualTo(1);
    assertThatThrownBy(() -> ClearSky.clearness(-1, 60, 172))
        .hasMessageContaining("horizontal_W_per_m2");
  }

  @Test
  void incidence() {
    // facing the sun squarely: tilt = 90° − elevation, azimuths alike
    assertThat(ClearSky.cosIncidence(30, 180, 60, 180)).isCloseTo(1, within(1e-12));
    // horizontal: sine of the elevation, whatever the azimuth
    assertThat(ClearSky.cosIncidence(30, 95, 0, 180)).isCloseTo(0.5, within(1e-12));
    // a wall with the sun behind it
    assertThat(ClearSky.cosIncidence(30, 0, 90, 180)).isCloseTo(-Math.sqrt(0.75), within(1e-12));
    // a wall at right angles to the sun
    assertThat(ClearSky.cosIncidence(30, 90, 90, 180)).isCloseTo(0, within(1e-12));
    // a wall that faces east, the sun in the east: cos 30°
    assertThat(ClearSky.cosIncidence(30, 90, 90, 90)).isCloseTo(0.8660, within(1e-4));
    // sun 30° high, 60° off a wall: cos 30°·cos 60°
    assertThat(ClearSky.cosIncidence(30, 240, 90, 180)).isCloseTo(0.4330, within(1e-4));
  }

  @Test
  void aHorizontalArraySeesTheHorizontalIrradiance() {
    double cosIncidence = ClearSky.cosIncidence(40, 150, 0, 180);
    assertThat(ClearSky.tilted_W_per_m2(600, 0.2, 40, cosIncidence, 0))
        .isCloseTo(600, within(1e-9));
  }

  @Test
  void tiltedHandWorked() {
    // G = 600, share 0.25, elevation 30°, tilt 60° facing the sun: beam 450/0.5·1 = 900; sky
    // 150·(1 + 0.5)/2 = 112.5; ground 600·0.2·(1 − 0.5)/2 = 30
    assertThat(ClearSky.tilted_W_per_m2(600, 0.25, 30, 1, 60)).isCloseTo(1042.5, within(1e-9));
    // the sun behind it leaves sky and ground
    assertThat(ClearSky.tilted_W_per_m2(600, 0.25, 30, -0.5, 60)).isCloseTo(142.5, within(1e-9));
    // all diffuse, upright: half the sky and half the ground
    assertThat(ClearSky.tilted_W_per_m2(600, 1, 30, 1, 90)).isCloseTo(300 + 60, within(1e-9));
    assertThatThrownBy(() -> ClearSky.tilted_W_per_m2(-1, 1, 30, 1, 90))
        .hasMessageContaining("horizontal_W_per_m2");
    assertThatThrownBy(() -> ClearSky.tilted_W_per_m2(1, 1.1, 30, 1, 90))
        .hasMessageContaining("diffuse share");
  }

  @Test
  void aLowSunHasNoBeam() {
    // 3° is the first elevation with a beam: 20·0.5/sin 3° = 191.07
    assertThat(ClearSky.tilted_W_per_m2(20, 0.5, 2.999, 1, 0)).isCloseTo(10, within(1e-9));
    assertThat(ClearSky.tilted_W_per_m2(20, 0.5, 3, 1, 0)).isCloseTo(10 + 191.07, within(0.01));
  }

  @Test
  void anArrayIsLimitedByItsInverter() {
    // 8.8 kW at 800 W/m² and 0.85: 5.984 kW
    assertThat(ClearSky.array_kW(8.8, 8, 800, 0.85)).isCloseTo(5.984, within(1e-9));
    assertThat(ClearSky.array_kW(8.8, 5, 800, 0.85)).isEqualTo(5);
    assertThat(ClearSky.array_kW(8.8, 8, 0, 0.85)).isZero();
    assertThatThrownBy(() -> ClearSky.array_kW(-1, 8, 1, 0.85)).hasMessageContaining("peak_kW");
    assertThatThrownBy(() -> ClearSky.array_kW(1, -8, 1, 0.85)).hasMessageContaining("inverter_kW");
    assertThatThrownBy(() -> ClearSky.array_kW(1, 8, -1, 0.85))
        .hasMessageContaining("tilted_W_per_m2");
    assertThatThrownBy(() -> ClearSky.array_kW(1, 8, 1, 1.1))
        .hasMessageContaining("performance ratio");
  }
}
