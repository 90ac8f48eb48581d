package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import deadband.trade.ClearSky;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SunTest {
  /** Reda and Andreas 2004, worked example (read): ΔT 67 s. */
  @Tag("outside")
  @Test
  void theLibraryGivesThePublishedPosition() {
    ZonedDateTime when = ZonedDateTime.of(2003, 10, 17, 12, 30, 30, 0, ZoneOffset.ofHours(-7));
    SolarPosition sun =
        SPA.calculateSolarPosition(when, 39.742476, -105.1786, 1830.14, 67, 820, 11);
    assertThat(sun.zenithAngle()).isCloseTo(50.11162, within(1e-5));
    assertThat(sun.azimuth()).isCloseTo(194.34024, within(1e-5));
  }

  /** Haurwitz 1945 (read), as the built-in days use it: an array lying flat without losses. */
  @Tag("outside")
  @ParameterizedTest
  @CsvSource({"10, 135.7417", "30, 487.8941", "50, 778.7667", "90, 1035.0921"})
  void aClearSkyGivesThePublishedIrradiance(double elevation_deg, double expected_W_per_m2) {
    assertThat(ClearSky.horizontal_W_per_m2(elevation_deg))
        .isCloseTo(expected_W_per_m2, within(1e-4));
  }

  /** The whole path of a day from the library, moved to solar time, against the path in use. */
  @Tag("outside")
  @ParameterizedTest
  @CsvSource({
    "2026-03-20, 52.3",
    "2026-06-21, 52.3",
    "2026-12-21, 52.3",
    "2026-04-21, 0",
    "2026-10-21, -35",
    "2026-06-21, 66"
  })
  void thePathFollowsTheLibraryWithinThreeTenthsOfADegree(LocalDate date, double latitude_deg) {
    SunPath path = SunPath.on(date, latitude_deg);
    double solarNoon_min = solarNoon_min(date);
    for (int minute = 0; minute < 1440; minute += 10) {
      path.at(minute);
      long second = Math.round((solarNoon_min + minute - 720) * 60);
      ZonedDateTime when =
          ZonedDateTime.of(date, LocalTime.MIDNIGHT, ZoneOffset.UTC).plusSeconds(second);
      SolarPosition sun =
          SPA.calculateSolarPosition(when, latitude_deg, 0, 0, DeltaT.estimate(date));
      double apart_deg = apart_deg(path, sun);
      assertThat(apart_deg).as("%s at minute %s", date, minute).isLessThan(0.3);
    }
  }

  /** Angle between two directions [°]. */
  private static double apart_deg(SunPath path, SolarPosition sun) {
    double elevation = Math.toRadians(path.elevation_deg());
    double other = Math.toRadians(90 - sun.zenithAngle());
    double turn = Math.toRadians(path.azimuth_deg() - sun.azimuth());
    double cosine =
        Math.sin(elevation) * Math.sin(other)
            + Math.cos(elevation) * Math.cos(other) * Math.cos(turn);
    return Math.toDegrees(Math.acos(Math.min(1, cosine)));
  }

  /** Minute of the UTC day at which the sun culminates at longitude 0, by halving. */
  private static double solarNoon_min(LocalDate date) {
    double from = 690;
    double to = 750;
    while (to - from > 1e-3) {
      double middle = (from + to) / 2;
      ZonedDateTime when =
          ZonedDateTime.of(date, LocalTime.MIDNIGHT, ZoneOffset.UTC)
              .plusSeconds(Math.round(middle * 60));
      boolean morning =
          SPA.calculateSolarPosition(when, 80, 0, 0, DeltaT.estimate(date)).azimuth() < 180;
      from = morning ? middle : from;
      to = morning ? to : middle;
    }
    return from;
  }

  @Test
  void theSunCulminatesAtNoonInTheSouthOrTheNorth() {
    SunPath north = SunPath.on(LocalDate.of(2026, 6, 21), 52.3);
    north.at(720);
    assertThat(north.azimuth_deg()).isCloseTo(180, within(1e-9));
    assertThat(north.elevation_deg()).isCloseTo(90 - 52.3 + 23.44, within(0.02));
    SunPath south = SunPath.on(LocalDate.of(2026, 6, 21), -35);
    south.at(720);
    assertThat(south.azimuth_deg() % 360).isCloseTo(0, within(1e-9));
  }

  @Test
  void aLatitudeBeyondThePoleIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SunPath.on(LocalDate.of(2026, 1, 1), 91))
        .withMessageContaining("91");
  }

  @Test
  void anArrayMirrorsMorningAndEvening() {
    var array = new SolarArray(52.3, 35, 180, 8.8, 100, 0.85);
    double[] power_kW = array.power_kW(LocalDate.of(2026, 4, 21), Sky.CLEAR.share(0));
    for (int minute = 0; minute < 720; minute++) {
      assertThat(power_kW[minute]).isCloseTo(power_kW[1439 - minute], within(1e-9));
    }
    assertThat(power_kW[719]).isBetween(6.5, 8.8);
    assertThat(power_kW[0]).isZero();
  }

  @Test
  void anArrayThatFacesEastPeaksInTheMorningAndTheInverterCutsIt() {
    var array = new SolarArray(52.3, 35, 90, 8.8, 5, 0.85);
    double[] power_kW = array.power_kW(LocalDate.of(2026, 6, 21), Sky.CLEAR.share(0));
    assertThat(power_kW[540]).isGreaterThan(power_kW[900]);
    assertThat(power_kW).doesNotContain(Double.NaN);
    for (double power : power_kW) {
      assertThat(power).isBetween(0.0, 5.0);
    }
  }

  /** What is worked out once for a day or for a surface gives what each minute by itself does. */
  @ParameterizedTest
  @CsvSource({
    "2026-06-21, 52.3, 35, 180",
    "2026-12-21, 57, 60, 250",
    "2026-01-15, -35, 20, 10",
    "2026-03-20, 0, 5, 90",
    "2026-06-21, 70, 90, 0"
  })
  void aSharedDayGivesEachMinuteOfItsOwn(
      LocalDate date, double latitude_deg, double tilt_deg, double azimuth_deg) {
    var array = new SolarArray(latitude_deg, tilt_deg, azimuth_deg, 8.8, 100, 0.85);
    double[] share = Sky.BROKEN.share(7);
    double[] power_kW = array.power_kW(date, share);
    SunPath path = SunPath.on(date, latitude_deg);
    for (int minute = 0; minute < 1440; minute++) {
      path.at(minute + 0.5);
      assertThat(power_kW[minute])
          .isEqualTo(path.isUp() ? power_kW(array, path, share[minute], date) : 0);
    }
  }

  private static double power_kW(SolarArray array, SunPath path, double share, LocalDate date) {
    double elevation_deg = path.elevation_deg();
    double horizontal_W_per_m2 = share * ClearSky.horizontal_W_per_m2(elevation_deg);
    double clearness = ClearSky.clearness(horizontal_W_per_m2, elevation_deg, date.getDayOfYear());
    double tilted_W_per_m2 =
        ClearSky.tilted_W_per_m2(
            horizontal_W_per_m2,
            ClearSky.diffuseShare(clearness),
            elevation_deg,
            ClearSky.cosIncidence(
                elevation_deg, path.azimuth_deg(), array.tilt_deg(), array.azimuth_deg()),
            array.tilt_deg());
    return ClearSky.array_kW(8.8, 100, tilted_W_per_m2, 0.85);
  }
}
