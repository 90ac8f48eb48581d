package deadband.report;

import io.jstach.jstache.JStache;
import io.jstach.jstache.JStacheConfig;
import io.jstach.jstache.JStacheType;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A document of headed lists, written as text, Markdown or a page of HTML.
 *
 * @param kind what document it is
 * @param verdict its one-line result; empty where it has none
 * @param verdictWord the same as one word
 * @param plate by what and from what it was made
 */
@JStache(path = "deadband/report/note.html")
@JStacheConfig(type = JStacheType.STACHE)
record Note(
    String title,
    String kind,
    String verdict,
    String verdictWord,
    List<Fact> plate,
    List<Section> sections) {

  private static final String BLANK = "________";

  record Fact(String label, String content) {}

  /**
   * A headed list.
   *
   * @param intro a sentence below the heading; may be empty
   * @param header names of the columns, those to be filled in by hand last; a tick column leads
   *     where there are any
   */
  record Section(
      String id,
      String heading,
      String intro,
      List<String> header,
      List<Row> rows,
      List<RecordModel.Picture> pictures) {

    static Section of(String heading, String intro, List<String> header, List<Row> rows) {
      return new Section(
          heading.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", "-"),
          heading,
          intro,
          header,
          rows,
          List.of());
    }

    Section with(List<RecordModel.Picture> more) {
      return new Section(id, heading, intro, header, rows, more);
    }

    boolean hasRows() {
      return !rows.isEmpty();
    }

    boolean hasTicks() {
      return rows.stream().anyMatch(row -> !row.blanks().isEmpty());
    }

    boolean isEmpty() {
      return rows.isEmpty() && intro.isEmpty();
    }
  }

  /**
   * One line.
   *
   * @param blanks what is to be filled in by hand
   */
  record Row(String label, String content, List<String> blanks) {
    static Row of(String label, String content) {
      return new Row(label, content, List.of());
    }
  }

  RecordModel.Sheet sheet() {
    return PageStyle.sheet(title + ": " + kind.toLowerCase(Locale.ROOT));
  }

  boolean hasVerdict() {
    return !verdict.isEmpty();
  }

  /** The page, ending in a line end. */
  String html() {
    return new NoteRenderer(String::valueOf, Svg::escaped).execute(this);
  }

  /** The note, ending in a line end. */
  String text(Layout layout) {
    StringBuilder text = new StringBuilder();
    text.append(layout.spread(title, verdict.toUpperCase(Locale.ROOT)));
    text.append(layout.wrapped("", kind));
    plate.forEach(fact -> text.append(layout.entry(fact.label(), fact.content())));
    for (Section section : sections) {
      text.append('\n').append(layout.wrapped("", section.heading()));
      if (!section.intro().isEmpty()) {
        text.append(layout.wrapped("  ", section.intro()));
      }
      section.rows().forEach(row -> text.append(layout.wrapped(mark(row), line(row))));
    }
    return text.toString();
  }

  private static String mark(Row row) {
    return row.blanks().isEmpty() ? "  - " : "  [ ] ";
  }

  private static String line(Row row) {
    return row.label()
        + (row.content().isEmpty() ? "" : ": " + row.content())
        + row.blanks().stream()
            .map(blank -> "; " + blank + " " + BLANK)
            .collect(Collectors.joining());
  }

  /** The note as Markdown, ending in a line end. */
  String markdown() {
    StringBuilder text = new StringBuilder("# " + MarkdownText.of(title) + "\n\n");
    text.append(kind).append('\n');
    if (hasVerdict()) {
      text.append("\n**").append(verdict.toUpperCase(Locale.ROOT)).append("**\n");
    }
    text.append('\n');
    plate.forEach(fact -> item(text, fact.label(), fact.content()));
    for (Section section : sections) {
      text.append("\n## ").append(section.heading()).append("\n\n");
      if (!section.intro().isEmpty()) {
        text.append(MarkdownText.of(section.intro())).append("\n\n");
      }
      section.rows().forEach(row -> item(text, row.label(), row.content()));
    }
    return text.toString();
  }

  private static void item(StringBuilder text, String label, String content) {
    text.append("- **").append(MarkdownText.of(label)).append("** ");
    text.append(MarkdownText.of(content)).append('\n');
  }
}
