package deadband.report;

import deadband.document.Printable;
import java.util.regex.Pattern;

/**
 * Lines of a text report: a narrow column of labels, and text wrapped beside it.
 *
 * @param width cells of a line
 * @param coloured whether words may be set off by colour
 */
public record Layout(int width, boolean coloured) {

  /** Lines shorter than this cannot be read. */
  public static final int NARROWEST = 60;

  /** Lines longer than this cannot be read either. */
  public static final int WIDEST = 120;

  private static final char GLUE = '\u00a0';

  private static final Pattern BEFORE_UNIT =
      Pattern.compile("(\\d) (?=(?:kWh|kW|W|°C|K|%|min|h|s|L|A|V|mm|m|days?)(?:[,;:.)/]|\\s|$))");

  /** Indent of the text beside the labels. */
  static final int INDENT = 16;

  /** Indent of a headline, beside its class. */
  static final int HEADLINE = 12;

  /** A layout for a terminal this wide. */
  public static Layout of(int columns, boolean coloured) {
    return new Layout(Math.max(NARROWEST, Math.min(WIDEST, columns)), coloured);
  }

  /** A label and its text, wrapped. */
  String labelled(String label, String text) {
    return wrapped(pad("   " + label, INDENT), text);
  }

  /** A label at the left edge and its text, wrapped. */
  String entry(String label, String text) {
    return wrapped(pad(label, INDENT), text);
  }

  /** Text behind a beginning of its own, wrapped and hanging under its own start. */
  public String wrapped(String beginning, String text) {
    StringBuilder lines = new StringBuilder(beginning);
    int indent = Printable.width(beginning);
    int column = indent;
    boolean first = true;
    for (String word : glued(Printable.of(text)).split(" ", -1)) {
      int cells = Printable.width(word);
      if (!first && column + 1 + cells > width) {
        lines.append('\n').append(" ".repeat(indent));
        column = indent;
        first = true;
      }
      lines.append(first ? "" : " ").append(word.replace(GLUE, ' '));
      column += cells + (first ? 0 : 1);
      first = false;
    }
    return lines.append('\n').toString();
  }

  /** The text with its numbers tied to their units, and arrows to what follows. */
  private static String glued(String text) {
    return BEFORE_UNIT
        .matcher(text)
        .replaceAll("$1" + GLUE)
        .replace("-> ", "->" + GLUE)
        .replace("(line ", "(line" + GLUE);
  }

  /** One text at the left edge and one at the right. */
  String spread(String left, String right) {
    String shown = Printable.of(left);
    int gap = width - Printable.width(shown) - Printable.width(right);
    return gap < 2
        ? wrapped("", left) + " ".repeat(Math.max(0, width - right.length())) + right + "\n"
        : shown + " ".repeat(gap) + right + "\n";
  }

  static String pad(String text, int cells) {
    return text + " ".repeat(Math.max(1, cells - Printable.width(text)));
  }
}
