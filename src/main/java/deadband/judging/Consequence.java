package deadband.judging;

import java.util.Locale;

/** What follows where a finding is left as it is, worst first. Each class is a promise. */
public enum Consequence {
  /** Can hurt someone: scald, infection, overheating, shock. */
  HAZARD,
  /** Can shorten the life of equipment. */
  DAMAGE,
  /** Buys from the grid on a surplus call, or throws sun away. */
  WASTE,
  /** Contradictory, unlikely or unproven: ask before sign-off. */
  QUERY,
  /** Paperwork missing. */
  RECORD;

  /** The word for it in reports and in the rules. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether an open finding of this class forbids signing off. */
  public boolean blocksSignOff() {
    return compareTo(WASTE) <= 0;
  }

  /**
   * The class a rule names.
   *
   * @throws IllegalArgumentException where the word is none of them
   */
  public static Consequence of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }
}
