package deadband.dayrun;

import java.util.Arrays;

/** What the sky lets through on a built-in day. */
public enum Sky {
  /** No cloud. */
  CLEAR,
  /** Clear with passing clouds, {@link Clouds}. */
  BROKEN,
  /** Closed all day: a fifth of the clear sky's light (our own choice). */
  DULL;

  static final double DULL_SHARE = 0.2;

  /**
   * Share of the clear sky's global irradiance, minute by minute through a day.
   *
   * @param pattern number of the cloud pattern; the same number gives the same clouds
   */
  double[] share(int pattern) {
    if (this == BROKEN) {
      return Clouds.share(pattern);
    }
    double[] share = new double[Window.MINUTES_PER_DAY];
    Arrays.fill(share, this == DULL ? DULL_SHARE : 1);
    return share;
  }
}
