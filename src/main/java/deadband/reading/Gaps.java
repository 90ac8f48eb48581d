package deadband.reading;

/**
 * What is to be done where a day file misses times or values: refuse them, or fill short gaps.
 *
 * <p>A filled gap holds the powers that went before; no hot water is drawn in it, since what is not
 * seen to be drawn must not be made up.
 *
 * @param longest_min longest gap that is filled [min], 0 for none
 */
public record Gaps(int longest_min) {

  /** A gap of half an hour: as long as the longest cloud of the built-in days. */
  public static final int USUAL_MIN = 30;

  public Gaps {
    if (longest_min < 0) {
      throw new IllegalArgumentException("a gap of " + longest_min + " min; 0 or more");
    }
  }

  /** Every gap is refused. */
  public static Gaps refused() {
    return new Gaps(0);
  }

  /** Gaps up to so many minutes are filled. */
  public static Gaps filledUpTo(int longest_min) {
    return new Gaps(longest_min);
  }

  boolean refuses() {
    return longest_min == 0;
  }

  /** Whether a gap of so many steps may be filled. */
  boolean fills(int steps, int step_s) {
    return (long) steps * step_s <= longest_min * 60L;
  }
}
