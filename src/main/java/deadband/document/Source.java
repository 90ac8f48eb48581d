package deadband.document;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * A text with its name, which can say on which line and in which column an offset lies.
 *
 * <p>A byte-order mark at the start stays in the text, so that an edited file keeps it, and counts
 * in no column. Lines end with LF, CR LF or CR.
 */
public final class Source {

  /** The byte-order mark, as a character. */
  public static final char MARK = '\uFEFF';

  private static final int MOST_SHOWN = 40;

  private final String name;
  private final String text;
  private volatile int @Nullable [] starts;

  private Source(String name, String text) {
    this.name = name;
    this.text = text;
  }

  /**
   * A text that was read.
   *
   * @param name the file's name as it is to be shown
   */
  public static Source of(String name, String text) {
    return new Source(name, text);
  }

  /** A name that no text could be read from, such as a missing file. */
  public static Source named(String name) {
    return new Source(name, "");
  }

  public String name() {
    return name;
  }

  public String text() {
    return text;
  }

  /**
   * Line and column of an offset.
   *
   * @param offset from 0 to the length of the text; beyond is taken as its end
   */
  public Place place(int offset) {
    int within = Math.max(0, Math.min(offset, text.length()));
    int line = lineAt(within);
    int start = starts()[line];
    int column = within <= start ? 1 : 1 + text.codePointCount(start, within);
    return new Place(line + 1, column, within);
  }

  /** How many lines the text has; an empty text has one. */
  public int lines() {
    return starts().length;
  }

  /**
   * A line without its end.
   *
   * @param line counted from 1
   */
  public String line(int line) {
    return slice(lineSpan(line));
  }

  /**
   * Where a line stands, its end not counted.
   *
   * @param line counted from 1
   * @throws IllegalArgumentException where the text has no such line
   */
  public Span lineSpan(int line) {
    int[] begins = starts();
    if (line < 1 || line > begins.length) {
      throw new IllegalArgumentException(
          "line " + line + " of a text that has lines 1 to " + begins.length);
    }
    int start = begins[line - 1];
    int end = line == begins.length ? text.length() : begins[line];
    while (end > start && isLineEnd(text.charAt(end - 1))) {
      end--;
    }
    return new Span(start, end);
  }

  /** The text of a span, exactly as it stands. */
  public String slice(Span span) {
    return text.substring(span.start(), span.end());
  }

  /** What stands in a span, on one line and with its middle left out where it is long. */
  public String excerpt(Span span) {
    return shortened(slice(span));
  }

  /** At most 40 characters of a text, its middle left out where it is longer. */
  public static String shortened(String whole) {
    return shortened(whole, MOST_SHOWN);
  }

  /** At most so many characters of a text, four or more. */
  static String shortened(String whole, int most) {
    if (whole.codePointCount(0, whole.length()) <= most) {
      return whole;
    }
    int tail = most / 4;
    int headEnd = whole.offsetByCodePoints(0, most - tail - 1);
    int tailStart = whole.offsetByCodePoints(whole.length(), -tail);
    return whole.substring(0, headEnd) + "…" + whole.substring(tailStart);
  }

  /** Two sources are the same where name and text are. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Source that && name.equals(that.name) && text.equals(that.text);
  }

  @Override
  public int hashCode() {
    return 31 * name.hashCode() + text.hashCode();
  }

  @Override
  public String toString() {
    return name;
  }

  /** Index of the line that holds an offset. */
  private int lineAt(int offset) {
    int found = Arrays.binarySearch(starts(), offset);
    return found >= 0 ? found : Math.max(0, -found - 2);
  }

  private int[] starts() {
    int[] known = starts;
    if (known == null) {
      // Two threads may both make it; they make the same.
      known = lineStarts();
      starts = known;
    }
    return known;
  }

  private int[] lineStarts() {
    int[] begins = new int[64];
    int count = 1;
    begins[0] = text.indexOf(MARK) == 0 ? 1 : 0;
    for (int i = 0; i < text.length(); i++) {
      if (!endsLine(i)) {
        continue;
      }
      if (count == begins.length) {
        begins = Arrays.copyOf(begins, 2 * count);
      }
      begins[count++] = i + 1;
    }
    return Arrays.copyOf(begins, count);
  }

  private boolean endsLine(int i) {
    char c = text.charAt(i);
    return c == '\n' || (c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n'));
  }

  private static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r';
  }
}
