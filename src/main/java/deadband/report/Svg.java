package deadband.report;

import deadband.document.Printable;
import java.util.ArrayDeque;
import java.util.Deque;

/** Writes SVG, one element after the other; everything written is escaped. */
final class Svg {

  private static final String FONTS =
      "'Helvetica Neue', Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif";

  private final StringBuilder out = new StringBuilder(64 * 1024);
  private final Deque<String> open = new ArrayDeque<>();

  /**
   * Opens an element.
   *
   * @param attributes names and values in turn
   */
  Svg open(String name, String... attributes) {
    start(name, attributes).append(">\n");
    open.push(name);
    return this;
  }

  Svg close() {
    out.append("</").append(open.pop()).append(">\n");
    return this;
  }

  /** An element without content. */
  Svg empty(String name, String... attributes) {
    start(name, attributes).append("/>\n");
    return this;
  }

  /** An element that holds a text. */
  Svg text(String name, String content, String... attributes) {
    start(name, attributes).append('>').append(escaped(content));
    out.append("</").append(name).append(">\n");
    return this;
  }

  /** A picture drawn before, so far to the right. */
  Svg picture(String drawn, double x) {
    start("g", "transform", "translate(" + px(x) + ")").append(">\n");
    out.append(drawn).append("</g>\n");
    return this;
  }

  /** Begins a picture with its title, its description and its ground. */
  Svg picture(DayChart.Size size, double height, String id, String title, String description) {
    open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "viewBox",
        "0 0 " + size.width() + " " + px(height),
        "width",
        Integer.toString(size.width()),
        "height",
        px(height),
        "role",
        "img",
        "aria-labelledby",
        id + "-title " + id + "-desc");
    text("title", title, "id", id + "-title");
    text("desc", description, "id", id + "-desc");
    return empty("rect", "width", "100%", "height", "100%", "fill", "#ffffff");
  }

  /** Begins a group in which everything is written in one hand. */
  Svg lettered(DayChart.Size size) {
    return open("g", "font-family", FONTS, "font-size", px(size.font()), "fill", ChartPaper.INK);
  }

  private StringBuilder start(String name, String... attributes) {
    out.append('<').append(name);
    for (int at = 0; at < attributes.length; at += 2) {
      out.append(' ').append(attributes[at]).append("=\"");
      out.append(escaped(attributes[at + 1])).append('"');
    }
    return out;
  }

  /** A length or place to a tenth, as short as it goes. */
  static String px(double value) {
    long tenths = Math.round(value * 10);
    String whole = (tenths < 0 ? "-" : "") + Math.abs(tenths) / 10;
    return tenths % 10 == 0 ? whole : whole + "." + Math.abs(tenths) % 10;
  }

  /**
   * Text as XML holds it; characters that XML cannot hold are left out, and those that show nothing
   * or turn the direction of writing are shown by their numbers.
   */
  static String escaped(String text) {
    StringBuilder escaped = new StringBuilder(text.length());
    text.codePoints().forEach(code -> escape(code, escaped));
    return escaped.toString();
  }

  private static void escape(int code, StringBuilder escaped) {
    switch (code) {
      case '&' -> escaped.append("&amp;");
      case '<' -> escaped.append("&lt;");
      case '>' -> escaped.append("&gt;");
      case '"' -> escaped.append("&quot;");
      default -> {
        if (isAllowed(code)) {
          boolean layout = code == '\t' || code == '\n';
          escaped.append(layout ? Character.toString(code) : Printable.of(code));
        }
      }
    }
  }

  /** XML 1.0, production 2. */
  private static boolean isAllowed(int code) {
    return code == '\t'
        || code == '\n'
        || (code >= ' ' && code < Character.MIN_SURROGATE)
        || (code > Character.MAX_SURROGATE && code != 0xFFFE && code != 0xFFFF);
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
