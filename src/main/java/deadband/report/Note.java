package deadband.report;

import io.jstach.jstache.JStache;
import io.jstach.jstache.JStacheConfig;
import io.jstach.jstache.JStachePartial;
import io.jstach.jstache.JStachePartials;
import io.jstach.jstache.JStacheType;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A document of headed lists, written as text, Markdown or a page of HTML.
 *
 * @param kind what document it is
 * @param verdict its one-line result; empty where it has none
 * @param verdictWord the same as one word
 * @param plate by what and from what it was made
 */
@JStache(path = "deadband/report/note.html")
@JStachePartials(@JStachePartial(name = "head", path = "deadband/report/head.html"))
@JStacheConfig(type = JStacheType.STACHE)
record Note(
    String title,
    String kind,
    String verdict,
    String verdictWord,
    List<Fact> plate,
    List<Section> sections) {

  private static final String LINE = "________";

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

    List<Head> heads() {
      int blanks = rows.stream().mapToInt(row -> row.blanks().size()).max().orElse(0);
      return IntStream.range(0, header.size())
          .mapToObj(at -> new Head(header.get(at), at >= header.size() - blanks))
          .toList();
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

  /** The heading of a column. */
  record Head(String name, boolean isBlank) {}

  /**
   * Room to write in.
   *
   * @param filled what is known already; empty where all is to be written
   */
  record Blank(String name, String filled) {
    static Blank of(String name) {
      return new Blank(name, "");
    }

    String line() {
      return "; " + name + " " + (filled.isEmpty() ? LINE : filled);
    }
  }

  /**
   * One line.
   *
   * @param content what is said of it in a line of text
   * @param cells the same in the columns of a page
   * @param blanks what is to be filled in by hand
   */
  record Row(String label, String content, List<String> cells, List<Blank> blanks) {

    /** A line with something to fill in. */
    static Row of(String label, String content, String... blanks) {
      return new Row(label, content, List.of(content), Stream.of(blanks).map(Blank::of).toList());
    }

    /** A step to take, and to note. */
    static Row step(String label, String blank) {
      return new Row(label, "", List.of(), List.of(Blank.of(blank)));
    }

    /** What was, and what is, in a column each. */
    static Row change(String label, String from, String to) {
      return new Row(label, from + " -> " + to, List.of(from, to), List.of());
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
        + row.blanks().stream().map(Blank::line).collect(Collectors.joining());
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
