package deadband.report;

import deadband.judging.Check;
import deadband.judging.RulePage;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The page of a check as a note to read, without the cases that test it. */
public final class PageText {

  private static final String CELL = "\\s*\\|\\s*";

  private final Layout layout;
  private final StringBuilder text = new StringBuilder();

  private PageText(Layout layout) {
    this.layout = layout;
  }

  /** The note, ending in a line end. */
  public static String of(Check check, Layout layout) {
    RulePage page = RulePage.of(check);
    PageText writer = new PageText(layout);
    writer.text.append(
        layout.spread(check.name(), check.consequence().word().toUpperCase(Locale.ROOT)));
    writer.text.append(layout.wrapped("", page.says() + "."));
    page.explanation().forEach(writer::section);
    return writer.text.toString();
  }

  private void section(String heading, String content) {
    text.append('\n').append(layout.wrapped("", heading));
    for (String paragraph : content.split("\n\n", -1)) {
      List<String> lines = paragraph.lines().toList();
      if (lines.get(0).startsWith("|")) {
        lines.stream().skip(2).forEach(this::row);
      } else if (lines.get(0).startsWith("- ")) {
        items(lines);
      } else {
        text.append(layout.wrapped("  ", plain(String.join(" ", lines))));
      }
    }
  }

  private void items(List<String> lines) {
    String joined = lines.stream().map(String::strip).collect(Collectors.joining(" ")).substring(2);
    Arrays.stream(joined.split(" - ", -1))
        .forEach(item -> text.append(layout.wrapped("  - ", plain(item))));
  }

  /** A row of a table: its first cell names what the others say. */
  private void row(String line) {
    String[] cells = line.strip().replaceAll("^\\|\\s*|\\s*\\|$", "").split(CELL, -1);
    String others = Arrays.stream(cells).skip(1).collect(Collectors.joining("; "));
    text.append(layout.wrapped("  ", plain(cells[0] + ": " + others)));
  }

  /** Markdown without its marks; a quantity that a finding fills in stands in square brackets. */
  private static String plain(String markdown) {
    return markdown
        .replaceAll("\\{([^}]+)}", "[$1]")
        .replaceAll("\\[([^]]+)]\\([^)]+\\)", "$1")
        .replaceAll("[`*]", "");
  }
}
