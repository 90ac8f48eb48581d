package deadband.dayrun;

import java.util.Arrays;

/**
 * Passing clouds, a pattern of our own: the same number gives the same clouds on every machine.
 *
 * <p>Every fifth dip lasts 15 to 30 minutes, the others 1 to 5; between them 12 to 59 minutes of
 * sun. A dip lets 25 to 49 % through, its first and last minute half as deep, so that the sharpest
 * fall is about what a measured day shows (trade values, section 9).
 */
final class Clouds {
  private static final int LONG_EVERY = 5;
  private static final int LEAST_SUN_MIN = 12;
  private static final int SUN_SPREAD_MIN = 48;
  private static final int LEAST_SHARE_PERCENT = 25;
  private static final int SHARE_SPREAD_PERCENT = 25;

  /** Steps of Marsaglia's 64-bit xorshift (J. Stat. Software 8(14), 2003). */
  private static final int[] SHIFTS = {13, 7, 17};

  private static final long SEED = 0x9E3779B97F4A7C15L;

  private long state;

  private Clouds(int pattern) {
    state = SEED * (2L * pattern + 1);
  }

  /** Share of the clear sky's light, minute by minute through a day. */
  static double[] share(int pattern) {
    double[] share = new double[Window.MINUTES_PER_DAY];
    Arrays.fill(share, 1);
    new Clouds(pattern).drift(share);
    return share;
  }

  private void drift(double[] share) {
    int minute = next(LEAST_SUN_MIN + SUN_SPREAD_MIN);
    for (int dip = next(LONG_EVERY); minute < share.length; dip++) {
      int length = dip % LONG_EVERY == 0 ? 15 + next(16) : 1 + next(5);
      double depth = 1 - (LEAST_SHARE_PERCENT + next(SHARE_SPREAD_PERCENT)) / 100.0;
      dip(share, minute, Math.min(share.length, minute + length), depth);
      minute += length + LEAST_SUN_MIN + next(SUN_SPREAD_MIN);
    }
  }

  private static void dip(double[] share, int from, int until, double depth) {
    for (int minute = from; minute < until; minute++) {
      boolean edge = minute == from || minute == until - 1;
      share[minute] = 1 - (edge ? depth / 2 : depth);
    }
  }

  /** A number from 0 to below {@code bound}. */
  private int next(int bound) {
    state ^= state << SHIFTS[0];
    state ^= state >>> SHIFTS[1];
    state ^= state << SHIFTS[2];
    return (int) Long.remainderUnsigned(state >>> 16, bound);
  }
}
