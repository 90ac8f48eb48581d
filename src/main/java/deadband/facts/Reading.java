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
  WITHOUT_DEFAULTS;

  private static final ThreadLocal<Reading> IN_FORCE =
      ThreadLocal.withInitial(() -> WITHOUT_DEFAULTS);

  /** From now on this thread reads all facts so. */
  public static void set(Reading reading) {
    IN_FORCE.set(reading);
  }

  /** How this thread reads them. */
  static Reading inForce() {
    return IN_FORCE.get();
  }
}
