package deadband.judging;

/** What a judgement comes to. */
public enum Verdict {
  READY("ready", "ready for sign-off"),
  ANSWERS_NEEDED("answers-needed", "answers needed"),
  NOT_READY("not-ready", "not to be signed off");

  private final String word;
  private final String words;

  Verdict(String word, String words) {
    this.word = word;
    this.words = words;
  }

  /** The word for programs. */
  public String word() {
    return word;
  }

  /** The words for people. */
  public String words() {
    return words;
  }
}
