package deadband.trade;

/**
 * Sun on a horizontal and on a tilted surface under a clear sky, and what an array makes of it.
 *
 * <p>Elevations and azimuths come from elsewhere; azimuth runs clockwise from north. The sky's
 * diffuse part is split off by the correlation of Erbs et al. 1982 and taken as equally bright all
 * over (isotropic), the ground as a diffuse mirror. None of the functions allocates.
 */
public final class ClearSky {
  /** Reflection of the ground to assume (common practice). */
  public static final double GROUND_REFLECTION = 0.2;

  /** Solar constant used by the correlation's open implementations [W/m²] (second-hand). */
  public static final double SOLAR_CONSTANT_W_PER_M2 = 1366.1;

  /**
   * Below this elevation the beam is left out: it would be a small number divided by a smaller one
   * [°]. The same cut-off as in the open implementations (zenith 87°).
   */
  public static final double LEAST_BEAM_ELEVATION_DEG = 3;

  private static final double STANDARD_W_PER_M2 = 1000;

  private ClearSky() {}

  /**
   * Global irradiance on the horizontal under a clear sky, GHI = 1098·sin h·exp(−0.059/sin h).
   * Haurwitz 1945 (second-hand).
   *
   * @param elevation_deg elevation of the sun h [°]
   * @return [W/m²]; 0 with the sun at or below the horizon
   */
  public static double horizontal_W_per_m2(double elevation_deg) {
    double sine = Math.sin(Math.toRadians(elevation_deg));
    return sine <= 0 ? 0 : 1098 * sine * Math.exp(-0.059 / sine);
  }

  /**
   * Irradiance outside the atmosphere, facing the sun. Spencer 1971: E = E_sc·(1.00011 +
   * 0.034221·cos b + 0.00128·sin b + 0.000719·cos 2b + 0.000077·sin 2b), b = 2π(j − 1)/365
   * (second-hand).
   *
   * @param dayOfYear day j, 1 to 366
   * @return [W/m²]
   */
  public static double extraterrestrial_W_per_m2(int dayOfYear) {
    double b = 2 * Math.PI * (DAY_OF_YEAR.check(dayOfYear) - 1) / 365;
    return SOLAR_CONSTANT_W_PER_M2
        * (1.00011
            + 0.034221 * Math.cos(b)
            + 0.00128 * Math.sin(b)
            + 0.000719 * Math.cos(2 * b)
            + 0.000077 * Math.sin(2 * b));
  }

  private static final ValidRange DAY_OF_YEAR = new ValidRange("day of year", 1, 366, "");

  /**
   * Clearness index, global irradiance over what would fall without an atmosphere.
   *
   * @param horizontal_W_per_m2 global irradiance on the horizontal [W/m²], 0 or more
   * @param elevation_deg elevation of the sun [°]
   * @param dayOfYear day, 1 to 366
   * @return 0 to 1, capped at 1; 0 with the sun at or below the horizon
   */
  public static double clearness(double horizontal_W_per_m2, double elevation_deg, int dayOfYear) {
    Require.notNegative("horizontal_W_per_m2", horizontal_W_per_m2);
    double sine = Math.sin(Math.toRadians(elevation_deg));
    return sine <= 0
        ? 0
        : clearnessOf(horizontal_W_per_m2, sine, extraterrestrial_W_per_m2(dayOfYear));
  }

  /** The same, with the sine of the elevation, positive, and the irradiance outside. */
  static double clearnessOf(double horizontal_W_per_m2, double sine, double outside_W_per_m2) {
    return Math.min(1, horizontal_W_per_m2 / (outside_W_per_m2 * sine));
  }

  /**
   * Diffuse share of the global irradiance by Erbs, Klein and Duffie 1982, Solar Energy 28(4),
   * 293–302 (second-hand): 1 − 0.09·k up to 0.22; 0.9511 − 0.1604·k + 4.388·k² − 16.638·k³ +
   * 12.336·k⁴ up to 0.80; 0.165 above.
   *
   * @param clearness clearness index k, 0 to 1
   * @return share, 0 to 1
   */
  public static double diffuseShare(double clearness) {
    double k = CLEARNESS.check(clearness);
    if (k <= 0.22) {
      return 1 - 0.09 * k;
    }
    if (k <= 0.80) {
      return 0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + k * 12.336)));
    }
    return 0.165;
  }

  private static final ValidRange CLEARNESS = new ValidRange("clearness index", 0, 1, "");

  /**
   * Cosine of the angle between the sun and the normal of a surface.
   *
   * <p>cos θ = sin h·cos β + cos h·sin β·cos(a_sun − a_surface).
   *
   * @param elevation_deg elevation of the sun h [°]
   * @param sunAzimuth_deg azimuth of the sun [°], clockwise from north
   * @param tilt_deg tilt of the surface β [°], 0 horizontal
   * @param azimuth_deg azimuth the surface faces [°], clockwise from north
   * @return cosine, negative with the sun behind the surface
   */
  public static double cosIncidence(
      double elevation_deg, double sunAzimuth_deg, double tilt_deg, double azimuth_deg) {
    double h = Math.toRadians(elevation_deg);
    double tilt = Math.toRadians(tilt_deg);
    double turn = Math.toRadians(sunAzimuth_deg - azimuth_deg);
    return Math.sin(h) * Math.cos(tilt) + Math.cos(h) * Math.sin(tilt) * Math.cos(turn);
  }

  /**
   * Irradiance on a tilted surface, isotropic sky.
   *
   * <p>G_t = (G − G_d)/sin h·max(0, cos θ) + G_d·(1 + cos β)/2 + G·r·(1 − cos β)/2, G_d = share·G.
   * Below 3° of elevation the first term is left out.
   *
   * @param horizontal_W_per_m2 global irradiance on the horizontal G [W/m²], 0 or more
   * @param diffuseShare diffuse share of it, 0 to 1
   * @param elevation_deg elevation of the sun h [°]
   * @param cosIncidence from {@link #cosIncidence}
   * @param tilt_deg tilt of the surface β [°]
   * @return [W/m²]
   */
  public static double tilted_W_per_m2(
      double horizontal_W_per_m2,
      double diffuseShare,
      double elevation_deg,
      double cosIncidence,
      double tilt_deg) {
    double global = Require.notNegative("horizontal_W_per_m2", horizontal_W_per_m2);
    double sine = Math.sin(Math.toRadians(elevation_deg));
    boolean beams = elevation_deg >= LEAST_BEAM_ELEVATION_DEG;
    return tiltedOf_W_per_m2(
        global, diffuseShare, sine, beams ? cosIncidence : 0, Math.cos(Math.toRadians(tilt_deg)));
  }

  /** The same with the sine of the elevation and the cosine of the tilt. */
  static double tiltedOf_W_per_m2(
      double global_W_per_m2,
      double diffuseShare,
      double sine,
      double cosIncidence,
      double cosTilt) {
    double diffuse = DIFFUSE_SHARE.check(diffuseShare) * global_W_per_m2;
    double sky = diffuse * (1 + cosTilt) / 2;
    double ground = global_W_per_m2 * GROUND_REFLECTION * (1 - cosTilt) / 2;
    double beam = cosIncidence > 0 ? (global_W_per_m2 - diffuse) / sine * cosIncidence : 0;
    return beam + sky + ground;
  }

  private static final ValidRange DIFFUSE_SHARE = new ValidRange("diffuse share", 0, 1, "");

  /**
   * AC power of an array, P = min(P_inverter, P_peak·G_t/1000·PR).
   *
   * @param peak_kW rated power of the array at 1000 W/m² [kW], 0 or more
   * @param inverter_kW rated power of the inverter [kW], 0 or more
   * @param tilted_W_per_m2 irradiance on the array [W/m²], 0 or more
   * @param performanceRatio losses from module to meter, 0 to 1
   * @return [kW]
   */
  public static double array_kW(
      double peak_kW, double inverter_kW, double tilted_W_per_m2, double performanceRatio) {
    double sun = Require.notNegative("tilted_W_per_m2", tilted_W_per_m2) / STANDARD_W_PER_M2;
    double ratio = PERFORMANCE_RATIO.check(performanceRatio);
    return Math.min(
        Require.notNegative("inverter_kW", inverter_kW),
        Require.notNegative("peak_kW", peak_kW) * sun * ratio);
  }

  private static final ValidRange PERFORMANCE_RATIO = new ValidRange("performance ratio", 0, 1, "");
}
