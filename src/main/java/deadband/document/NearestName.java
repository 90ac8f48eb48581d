package deadband.document;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/**
 * The known name a mistyped one most likely means.
 *
 * <p>Capitals and separators do not count: {@code startKw}, {@code start-kw} and {@code start_kW}
 * are one. Else the name with the fewest slips wins, a slip being a letter too many, missing,
 * wrong, or swapped with its neighbour (optimal string alignment, a restricted Damerau–Levenshtein
 * distance). A third of the letters may be slips, no more; a forgotten unit at the end counts as
 * one.
 */
public final class NearestName {

  private static final int LONGEST = 64;

  private NearestName() {}

  /**
   * The nearest of the known names; of equally near ones the first.
   *
   * @return empty where none is near enough to be worth naming
   */
  public static Optional<String> of(String typed, Collection<String> known) {
    if (typed.length() > LONGEST) {
      return Optional.empty();
    }
    String plain = plain(typed);
    int least = 1 + plain.length() / 3;
    String nearest = null;
    for (String name : known) {
      int slips = slips(typed, plain, name);
      if (slips < least) {
        least = slips;
        nearest = name;
      }
    }
    return Optional.ofNullable(nearest);
  }

  /** Whether two names differ in capitals and separators alone. */
  public static boolean isSame(String typed, String known) {
    return plain(typed).equals(plain(known));
  }

  private static int slips(String typed, String plain, String name) {
    if (typed.equals(name)) {
      return -1;
    }
    String known = plain(name);
    int unit = name.lastIndexOf('_');
    int slips = distance(plain, known);
    return slips > 1 && unit > 0 && plain.equals(plain(name.substring(0, unit))) ? 1 : slips;
  }

  /** Letters and digits alone, in small letters. */
  private static String plain(String name) {
    StringBuilder out = new StringBuilder(name.length());
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      if (c != '_' && c != '-' && c != ' ' && c != '.') {
        out.append(c);
      }
    }
    return out.toString().toLowerCase(Locale.ROOT);
  }

  /** Slips between two words: insertion, deletion, substitution, swap of neighbours. */
  static int distance(String a, String b) {
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        cost[i][j] = i == 0 || j == 0 ? i + j : cheapest(cost, a, b, i, j);
      }
    }
    return cost[a.length()][b.length()];
  }

  private static int cheapest(int[][] cost, String a, String b, int i, int j) {
    int wrong = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int least = Math.min(cost[i - 1][j] + 1, cost[i][j - 1] + 1);
    least = Math.min(least, cost[i - 1][j - 1] + wrong);
    return isSwap(a, b, i, j) ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
  }

  private static boolean isSwap(String a, String b, int i, int j) {
    return i > 1
        && j > 1
        && a.charAt(i - 1) == b.charAt(j - 2)
        && a.charAt(i - 2) == b.charAt(j - 1);
  }
}
