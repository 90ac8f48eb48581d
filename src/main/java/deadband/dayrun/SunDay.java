package deadband.dayrun;

import deadband.trade.ClearSky;
import deadband.trade.TiltedSurface;
import java.time.LocalDate;

/**
 * The sun through one day at one latitude, minute by minute at the middle of each: what homes of
 * one latitude share. The last days asked for are kept.
 */
final class SunDay {
  private static final Kept<Key, SunDay> LAST = new Kept<>(64);

  private final double outside_W_per_m2;
  private final double[] elevation_deg = new double[Window.MINUTES_PER_DAY];
  private final double[] azimuth_deg = new double[Window.MINUTES_PER_DAY];
  private final double[] sine = new double[Window.MINUTES_PER_DAY];
  private final double[] cosine = new double[Window.MINUTES_PER_DAY];
  private final double[] horizontal_W_per_m2 = new double[Window.MINUTES_PER_DAY];

  private SunDay(Key key) {
    SunPath path = SunPath.on(key.date, key.latitude_deg);
    outside_W_per_m2 = ClearSky.extraterrestrial_W_per_m2(key.date.getDayOfYear());
    for (int minute = 0; minute < Window.MINUTES_PER_DAY / 2; minute++) {
      path.at(minute + 0.5);
      if (path.isUp()) {
        double turn_deg = path.fromSouth_deg();
        set(minute, path.elevation_deg(), SunPath.SOUTH_DEG + turn_deg);
        mirror(minute, SunPath.SOUTH_DEG - turn_deg);
      }
    }
  }

  private void set(int minute, double elevation_deg, double azimuth_deg) {
    this.elevation_deg[minute] = elevation_deg;
    this.azimuth_deg[minute] = azimuth_deg;
    sine[minute] = Math.sin(Math.toRadians(elevation_deg));
    cosine[minute] = Math.cos(Math.toRadians(elevation_deg));
    horizontal_W_per_m2[minute] = ClearSky.horizontal_W_per_m2(elevation_deg);
  }

  /** In solar time the sun stands after noon as high as it stood before. */
  private void mirror(int minute, double azimuth_deg) {
    int after = Window.MINUTES_PER_DAY - 1 - minute;
    elevation_deg[after] = elevation_deg[minute];
    this.azimuth_deg[after] = azimuth_deg;
    sine[after] = sine[minute];
    cosine[after] = cosine[minute];
    horizontal_W_per_m2[after] = horizontal_W_per_m2[minute];
  }

  private record Key(LocalDate date, double latitude_deg) {}

  /** The sun on a date at a latitude [°], north positive. */
  static SunDay on(LocalDate date, double latitude_deg) {
    return LAST.of(new Key(date, latitude_deg), SunDay::new);
  }

  /** Whether it stands above the horizon. */
  boolean isUp(int minute) {
    return elevation_deg[minute] > 0;
  }

  /** On a tilted surface, with a share of the clear sky's light. */
  double on_W_per_m2(TiltedSurface surface, int minute, double share) {
    return surface.irradiance_W_per_m2(
        share * horizontal_W_per_m2[minute],
        sine[minute],
        cosine[minute],
        azimuth_deg[minute],
        outside_W_per_m2,
        elevation_deg[minute] >= ClearSky.LEAST_BEAM_ELEVATION_DEG);
  }
}
