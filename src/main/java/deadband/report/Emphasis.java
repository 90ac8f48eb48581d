package deadband.report;

/** Words set off on a terminal. The word itself carries the meaning; colour never does alone. */
final class Emphasis {

  private static final String BOLD = "\u001b[1m";
  private static final String PLAIN = "\u001b[0m";

  private Emphasis() {}

  static String of(String word, boolean coloured) {
    return coloured ? BOLD + word + PLAIN : word;
  }
}
