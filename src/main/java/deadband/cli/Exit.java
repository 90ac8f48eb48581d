package deadband.cli;

import deadband.judging.Verdict;

/** How the program ends; over several files the highest number wins. */
final class Exit {

  /** Ready, or nothing at or above what {@code --fail-on} names. */
  static final int READY = 0;

  /** A verdict at or above what {@code --fail-on} names. */
  static final int VERDICT = 1;

  /** The command was used wrongly. */
  static final int USAGE = 2;

  /** Some input could not be read. */
  static final int UNREADABLE = 3;

  /** Not one check could be made. */
  static final int NOTHING_CHECKED = 4;

  /** A file that was to be written could not be. */
  static final int UNWRITABLE = 5;

  /** A fault of the program itself. */
  static final int FAULT = 70;

  private Exit() {}

  /** The verdict from which on the program ends with {@link #VERDICT}. */
  enum FailOn {
    ANSWERS_NEEDED,
    NOT_READY,
    NEVER;

    int exit(Verdict verdict) {
      boolean fails =
          switch (this) {
            case ANSWERS_NEEDED -> verdict != Verdict.READY;
            case NOT_READY -> verdict == Verdict.NOT_READY;
            case NEVER -> false;
          };
      return fails ? VERDICT : READY;
    }
  }
}
