package deadband.setup;

/** The kind of electrical signal. */
public enum Signal implements Choice {
  MAINS("mains"),
  VOLT_FREE("volt-free"),
  EXTRA_LOW_VOLTAGE("extra-low voltage");

  private final String word;

  Signal(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
