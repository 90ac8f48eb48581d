package deadband.dayrun;

import deadband.trade.ClearSky;
import deadband.trade.TiltedSurface;
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
    SunDay sun = SunDay.on(date, latitude_deg);
    TiltedSurface surface = new TiltedSurface(tilt_deg, azimuth_deg);
    double[] power_kW = new double[Window.MINUTES_PER_DAY];
    for (int minute = 0; minute < power_kW.length; minute++) {
      if (sun.isUp(minute)) {
        double tilted_W_per_m2 = sun.on_W_per_m2(surface, minute, share[minute]);
        power_kW[minute] =
            ClearSky.array_kW(peak_kW, inverter_kW, tilted_W_per_m2, performanceRatio);
      }
    }
    return power_kW;
  }
}
