package deadband.reading;

import deadband.document.Problem.Kind;
import org.jspecify.annotations.Nullable;

/**
 * The numbers of one file: decimals behind a point or, where columns are not parted by commas,
 * behind a comma; one or the other throughout.
 *
 * <p>{@code 1,234} is a thousand times more in one country than in another. A file with commas must
 * therefore hold at least one that can only be a decimal comma, such as that of {@code 0,5}.
 */
final class Decimals {

  private static final String FORM = "a number such as 3.5";
  private static final int GROUP = 3;

  private final boolean commaAllowed;
  private @Nullable Place point;
  private @Nullable Place comma;
  private boolean commaProven;

  Decimals(boolean commaAllowed) {
    this.commaAllowed = commaAllowed;
  }

  /**
   * Where a number stands.
   *
   * @param index of its cell
   */
  record Place(int line, int index) {}

  /** The number a cell holds; not a number where {@link #error} says what is wrong with it. */
  double value(String cell, int line, int index) {
    int mark = mark(cell);
    if (mark < 0) {
      return Double.NaN;
    }
    if (mark == cell.length()) {
      return Double.parseDouble(cell);
    }
    return cell.charAt(mark) == '.' ? pointed(cell, line, index) : parted(cell, mark, line, index);
  }

  private double pointed(String cell, int line, int index) {
    point = point == null ? new Place(line, index) : point;
    return Double.parseDouble(cell);
  }

  private double parted(String cell, int mark, int line, int index) {
    if (!commaAllowed) {
      return Double.NaN;
    }
    comma = comma == null ? new Place(line, index) : comma;
    commaProven |= !mayBeGrouped(cell, mark);
    return Double.parseDouble(cell.replace(',', '.'));
  }

  /** One to three digits, none of them leading zeros, a comma, and three digits. */
  private static boolean mayBeGrouped(String cell, int mark) {
    int start = Figures.isDigit(cell.charAt(0)) ? 0 : 1;
    int whole = mark - start;
    return whole >= 1
        && whole <= GROUP
        && cell.charAt(start) != '0'
        && cell.length() == mark + 1 + GROUP;
  }

  /** Where its decimal mark stands, its length where it has none, -1 where it is no number. */
  private static int mark(String cell) {
    int start = cell.startsWith("-") || cell.startsWith("+") ? 1 : 0;
    int at = Figures.digits(cell, start);
    boolean marked = at < cell.length() && ".,".indexOf(cell.charAt(at)) >= 0;
    int end = marked ? Figures.digits(cell, at + 1) : at;
    boolean digits = at > start || end > at + 1;
    return digits && exponentEnd(cell, end) == cell.length() ? (marked ? at : cell.length()) : -1;
  }

  private static int exponentEnd(String cell, int at) {
    if (at == cell.length() || "eE".indexOf(cell.charAt(at)) < 0) {
      return at;
    }
    boolean signed = cell.startsWith("-", at + 1) || cell.startsWith("+", at + 1);
    int first = signed ? at + 2 : at + 1;
    int end = Figures.digits(cell, first);
    return end > first ? end : at;
  }

  /** What is wrong with a cell that holds no number. */
  SyntaxError error(String cell) {
    if (cell.isEmpty()) {
      return new SyntaxError(Kind.VALUE_MISSING, 0, 0, "a number, 0 for none");
    }
    if (isWord(cell)) {
      return new SyntaxError(Kind.NOT_FINITE, 0, cell.length(), FORM);
    }
    if ("−–—".indexOf(cell.charAt(0)) >= 0) {
      return new SyntaxError(Kind.LONG_MINUS, 0, cell.length(), "-" + cell.substring(1).strip());
    }
    if (mark(cell) >= 0) {
      return new SyntaxError(Kind.DECIMAL_COMMA, 0, cell.length(), cell.replace(',', '.'));
    }
    return grouped(cell);
  }

  private static boolean isWord(String cell) {
    String word = cell.startsWith("-") || cell.startsWith("+") ? cell.substring(1) : cell;
    return word.equalsIgnoreCase("nan")
        || word.equalsIgnoreCase("inf")
        || word.equalsIgnoreCase("infinity");
  }

  private static SyntaxError grouped(String cell) {
    String bare = cell.replaceAll("(?<=\\d)[ '’\u00a0\u202f](?=\\d{3})", "");
    if (bare.length() < cell.length() && mark(bare) >= 0) {
      return new SyntaxError(Kind.DIGITS_GROUPED, 0, cell.length(), bare);
    }
    if (cell.matches("[+-]?\\d{1,3}([.,]\\d{3})*[.,]\\d+")) {
      return new SyntaxError(
          Kind.DIGITS_GROUPED, 0, cell.length(), "the digits without marks between them");
    }
    String number = cell.replaceAll("[ °%a-zA-Z/]+$", "");
    return number.length() < cell.length() && mark(number) >= 0
        ? new SyntaxError(
            Kind.UNIT_WRITTEN, 0, cell.length(), number + "; the unit stands in the header")
        : new SyntaxError(Kind.WRONG_KIND, 0, cell.length(), FORM);
  }

  /** The first decimal comma of a file that has decimal points too, or of one that proves none. */
  @Nullable Place doubtfulComma() {
    return comma != null && (point != null || !commaProven) ? comma : null;
  }

  /** The first decimal point. */
  @Nullable Place point() {
    return point;
  }
}
