package deadband.setup;

/** A phase conductor of the supply. */
public enum Phase implements Choice {
  L1("L1"),
  L2("L2"),
  L3("L3");

  private final String word;

  Phase(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
