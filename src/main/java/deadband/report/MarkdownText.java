package deadband.report;

import deadband.document.Printable;

/** Text as Markdown shows it: no character of it is a mark, and none hides. */
final class MarkdownText {

  private MarkdownText() {}

  /** On one line, whatever it held. */
  static String of(String text) {
    StringBuilder escaped = new StringBuilder();
    Printable.of(text.strip())
        .codePoints()
        .forEach(
            code -> {
              switch (code) {
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '&' -> escaped.append("&amp;");
                case '\\', '`', '*', '_', '[', ']', '|', '#', '~', '!', '@' ->
                    escaped.append('\\').appendCodePoint(code);
                default -> escaped.appendCodePoint(code);
              }
            });
    return escaped.toString();
  }
}
