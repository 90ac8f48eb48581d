package deadband.judging;

import java.util.Locale;

/**
 * What follows where a finding is left as it is, worst first. Each class is a promise, and ranks
 * its own findings by a size in its own unit.
 */
public enum Consequence {
  /** Can hurt someone: scald, infection, overheating, shock. Size: kelvin past the limit. */
  HAZARD(Size.Unit.KELVIN),
  /** Can shorten the life of equipment. Size: starts an hour. */
  DAMAGE(Size.Unit.STARTS_PER_HOUR),
  /** Buys from the grid on a surplus call, or throws sun away. Size: kilowatts bought or lost. */
  WASTE(Size.Unit.KILOWATT),
  /** Contradictory, unlikely or unproven: ask before sign-off. Size: share of the limit missed. */
  QUERY(Size.Unit.SHARE),
  /** Paperwork missing. Size: entries missing. */
  RECORD(Size.Unit.ENTRIES);

  private final Size.Unit sizeUnit;

  Consequence(Size.Unit sizeUnit) {
    this.sizeUnit = sizeUnit;
  }

  /** The word for it in reports and in the rules. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** What the sizes count that the cases of its checks give. */
  public Size.Unit sizeUnit() {
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
