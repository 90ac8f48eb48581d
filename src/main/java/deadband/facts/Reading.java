package deadband.facts;

/**
 * How rules take what is open while they look at the facts of a setup. What holds surely holds at
 * best too, and what holds at best holds without defaults too.
 */
public enum Reading {
  /** What is not known never holds; defaults count. */
  SURELY,
  /** What is not known holds; defaults count. */
  AT_BEST,
  /** What is not known holds, and so does what rests on a default. */
  WITHOUT_DEFAULTS
}
