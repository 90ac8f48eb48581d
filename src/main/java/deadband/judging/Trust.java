package deadband.judging;

/** How far a remedy can be trusted without asking anyone. */
public enum Trust {
  /** Nothing is given up. */
  SAFE("safe"),
  /** Something is given up, and said. */
  TRADE_OFF("trade-off"),
  /** No setting: something has to be fitted, replaced, moved or adjusted. */
  WORK_ON_SITE("work on site"),
  /** Only the site can say what to set. */
  NEEDS_INPUT("needs your input");

  private final String words;

  Trust(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
