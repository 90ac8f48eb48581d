package deadband.judging;

import java.util.Locale;

/**
 * What follows where a finding is left as it is, worst first. Each class is a promise, and ranks
 * its own findings by a size in its own unit.
 */
public enum Consequence {
  /** Can hurt someone: scald, infection, overheating, shock. Size: kelvin past the limit. */
  HAZARD("K"),
  /** Can shorten the life of equipment. Size: starts an hour; 0 where it is not about starting. */
  DAMAGE("1/h"),
  /** Buys from the grid on a surplus call, or throws sun away. Size: kilowatts bought or lost. */
  WASTE("kW"),
  /** Contradictory, unlikely or unproven: ask before sign-off. Size: share of the limit missed. */
  QUERY("1"),
  /** Paperwork missing. Size: entries missing. */
  RECORD("1");

  private final String sizeUnit;

  Consequence(String sizeUnit) {
    this.sizeUnit = sizeUnit;
  }

  /** The word for it in reports and in the rules. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The unit in which its findings are ranked. */
  public String sizeUnit() {
    return sizeUnit;
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
