package deadband.trade;

/**
 * A tilted surface under the sky of {@link ClearSky}, for a day minute by minute: what does not
 * change from minute to minute is worked out once.
 */
public final class TiltedSurface {
  private final double azimuth_deg;
  private final double sinTilt;
  private final double cosTilt;

  /**
   * A surface.
   *
   * @param tilt_deg tilt from level [°]
   * @param azimuth_deg azimuth it faces [°], clockwise from north
   */
  public TiltedSurface(double tilt_deg, double azimuth_deg) {
    this.azimuth_deg = azimuth_deg;
    sinTilt = Math.sin(Math.toRadians(tilt_deg));
    cosTilt = Math.cos(Math.toRadians(tilt_deg));
  }

  /**
   * Irradiance on it by {@link ClearSky#tilted_W_per_m2}, with the diffuse share of {@link
   * ClearSky#diffuseShare}.
   *
   * @param horizontal_W_per_m2 global irradiance on the horizontal [W/m²], 0 or more
   * @param sine sine of the sun's elevation, positive
   * @param cosine cosine of the sun's elevation
   * @param sunAzimuth_deg azimuth of the sun [°]
   * @param outside_W_per_m2 {@link ClearSky#extraterrestrial_W_per_m2} of the day
   * @param beams whether the sun stands high enough for its beam to count
   * @return [W/m²]
   */
  public double irradiance_W_per_m2(
      double horizontal_W_per_m2,
      double sine,
      double cosine,
      double sunAzimuth_deg,
      double outside_W_per_m2,
      boolean beams) {
    double clearness = ClearSky.clearnessOf(horizontal_W_per_m2, sine, outside_W_per_m2);
    double cosTurn = beams ? Math.cos(Math.toRadians(sunAzimuth_deg - azimuth_deg)) : 0;
    double cosIncidence = sine * cosTilt + cosine * sinTilt * cosTurn;
    return ClearSky.tiltedOf_W_per_m2(
        horizontal_W_per_m2,
        ClearSky.diffuseShare(clearness),
        sine,
        beams ? cosIncidence : 0,
        cosTilt);
  }
}
