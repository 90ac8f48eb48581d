package deadband.trade;

/**
 * How a figure is known. The mark travels with the figure into limits, rule pages and tests, and
 * nothing marked {@link #MEMORY} may become a hard limit that cannot be overridden.
 */
public enum Known {
  /** Read in the primary text named as its source. */
  READ("read"),
  /** Read in a draft of a standard, which the standard may yet change. */
  DRAFT("read in a draft"),
  /** Read in a text that reproduces the document named; check again before relying on it. */
  SECOND_HAND("second-hand"),
  /** Computed from values that are known; the arithmetic stands beside it. */
  DERIVED("derived"),
  /** A fact of the trade with no published source. */
  COMMON_PRACTICE("common practice"),
  /** Believed, not read. */
  MEMORY("from memory");

  private final String words;

  Known(String words) {
    this.words = words;
  }

  /** Whether a hazard or damage may rest on it: not on a draft, common practice or memory. */
  public boolean isFirm() {
    return this == READ || this == SECOND_HAND || this == DERIVED;
  }

  /** The mark as it is printed. */
  public String words() {
    return words;
  }

  @Override
  public String toString() {
    return words;
  }
}
