package deadband.dayrun;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * Where the sun stands on one day, in solar time: it culminates at 12:00.
 *
 * <p>The declination δ comes from the solar position library (Reda and Andreas 2004), once a day at
 * noon; over the day it moves by at most 0.2° either way. From the hour angle H: sin h = sin φ·sin
 * δ + cos φ·cos δ·cos H, and azimuth 180° + atan2(sin H, cos H·sin φ − tan δ·cos φ).
 */
final class SunPath {
  private static final double MINUTES_PER_DEGREE = 4;
  private static final double NOON_MIN = 720;
  static final double SOUTH_DEG = 180;

  /** The same for every home. */
  private static final Kept<LocalDate, Double> DECLINATIONS = new Kept<>(400);

  private final double sinLatitude;
  private final double cosLatitude;
  private final double sinDeclination;
  private final double cosDeclination;
  private double sinElevation;
  private double hourAngle;
  private double cosHour;

  private SunPath(double latitude_deg, double sinDeclination) {
    sinLatitude = Math.sin(Math.toRadians(latitude_deg));
    cosLatitude = Math.cos(Math.toRadians(latitude_deg));
    this.sinDeclination = sinDeclination;
    cosDeclination = Math.sqrt(1 - sinDeclination * sinDeclination);
  }

  /**
   * The path on a date at a latitude [°], north positive.
   *
   * @throws IllegalArgumentException where the latitude is not within ±90°
   */
  static SunPath on(LocalDate date, double latitude_deg) {
    if (!(Math.abs(latitude_deg) <= 90)) {
      throw new IllegalArgumentException("latitude " + latitude_deg + "° is not within ±90°");
    }
    return new SunPath(latitude_deg, DECLINATIONS.of(date, SunPath::sinDeclination));
  }

  /** Seen from the equator: sin δ = sin z·cos A. */
  private static double sinDeclination(LocalDate date) {
    ZonedDateTime noon = ZonedDateTime.of(date, LocalTime.NOON, ZoneOffset.UTC);
    SolarPosition sun = SPA.calculateSolarPosition(noon, 0, 0, 0, DeltaT.estimate(date));
    return Math.sin(Math.toRadians(sun.zenithAngle())) * Math.cos(Math.toRadians(sun.azimuth()));
  }

  /** Moves to a time of day in solar time [min], fractions allowed. */
  void at(double minuteOfDay) {
    hourAngle = Math.toRadians((minuteOfDay - NOON_MIN) / MINUTES_PER_DEGREE);
    cosHour = Math.cos(hourAngle);
    sinElevation = sinLatitude * sinDeclination + cosLatitude * cosDeclination * cosHour;
  }

  /** Whether it stands above the horizon. */
  boolean isUp() {
    return sinElevation > 0;
  }

  /** Elevation without refraction [°]. */
  double elevation_deg() {
    return Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, sinElevation))));
  }

  /** Azimuth clockwise from south [°]: as far before noon as after it, the other way. */
  double fromSouth_deg() {
    double south = cosHour * sinLatitude - sinDeclination / cosDeclination * cosLatitude;
    return Math.toDegrees(Math.atan2(Math.sin(hourAngle), south));
  }

  /** Azimuth clockwise from north [°]. */
  double azimuth_deg() {
    return SOUTH_DEG + fromSouth_deg();
  }
}
