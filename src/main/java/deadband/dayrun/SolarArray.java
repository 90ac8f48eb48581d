package deadband.dayrun;

import deadband.trade.ClearSky;
import java.time.LocalDate;

/**
 * A solar array and where it stands, for built-in days.
 *
 * @param latitude_deg latitude [°], north positive
 * @param tilt_deg tilt from level [°]
 * @param azimuth_deg direction it faces, clockwise from north [°]
 * @param peak_kW rated power [kW]
 * @param inverter_kW rated power of the inverter [kW]
 * @param performanceRatio losses from module to meter, 0 to 1
 */
public record SolarArray(
    double latitude_deg,
    double tilt_deg,
    double azimuth_deg,
    double peak_kW,
    double inverter_kW,
    double performanceRatio) {
  /**
   * AC power on a date, minute by minute in solar time [kW]: Haurwitz's clear sky, what the sky
   * lets through of it, and {@link ClearSky#tilted_W_per_m2}; each minute by the sun at its middle.
   *
   * @param share share of the clear sky's light, minute by minute
   */
  double[] power_kW(LocalDate date, double[] share) {
    SunPath sun = SunPath.on(date, latitude_deg);
    int dayOfYear = date.getDayOfYear();
    double[] power_kW = new double[Window.MINUTES_PER_DAY];
    for (int minute = 0; minute < power_kW.length; minute++) {
      sun.at(minute + 0.5);
      if (sun.elevation_deg() > 0) {
        power_kW[minute] = power_kW(sun, share[minute], dayOfYear);
      }
    }
    return power_kW;
  }

  private double power_kW(SunPath sun, double share, int dayOfYear) {
    double elevation_deg = sun.elevation_deg();
    double horizontal_W_per_m2 = share * ClearSky.horizontal_W_per_m2(elevation_deg);
    double clearness = ClearSky.clearness(horizontal_W_per_m2, elevation_deg, dayOfYear);
    double tilted_W_per_m2 =
        ClearSky.tilted_W_per_m2(
            horizontal_W_per_m2,
            ClearSky.diffuseShare(clearness),
            elevation_deg,
            ClearSky.cosIncidence(elevation_deg, sun.azimuth_deg(), tilt_deg, azimuth_deg),
            tilt_deg);
    return ClearSky.array_kW(peak_kW, inverter_kW, tilted_W_per_m2, performanceRatio);
  }
}
