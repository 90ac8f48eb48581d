package deadband.document;

import java.util.ArrayList;
import java.util.List;

/**
 * A line of a file with a caret under a stretch of it, cut to a width around that stretch.
 *
 * <p>Cells are counted as a terminal lays them out, so that the caret stands under the value after
 * accents, wide characters, emoji and tabs.
 *
 * @param line what is shown of the line
 * @param before cells in front of the caret
 * @param carets cells under which it stands
 */
record CaretLine(String line, int before, int carets) {

  private static final int TAB = 4;
  private static final String CUT = "…";

  /**
   * Lays out the line a span begins on. Of a span over several lines its first character is marked.
   *
   * @param room cells the line may have
   */
  static CaretLine of(Source source, Span span, int room) {
    Span line = source.lineSpan(source.place(span.start()).line());
    int start = Math.min(Math.max(span.start(), line.start()), line.end());
    int end = span.end() <= line.end() ? Math.max(start, span.end()) : after(source, start, line);
    return new Layout(source.text(), unindented(source.text(), line, start), room).of(start, end);
  }

  String text(String indent) {
    return indent + line + "\n" + indent + " ".repeat(before) + "^".repeat(carets) + "\n";
  }

  private static int after(Source source, int start, Span line) {
    return start == line.end() ? start : source.text().offsetByCodePoints(start, 1);
  }

  private static Span unindented(String text, Span line, int most) {
    int start = line.start();
    while (start < most && Gap.isBlank(text.charAt(start))) {
      start++;
    }
    return new Span(start, line.end());
  }

  /** One character as it is shown, and the cells it takes there. */
  private record Glyph(int offset, String shown, int cells) {}

  private record Layout(String text, Span line, int room) {

    /** Keeps the value in sight: a third of the room before it, the rest from it on. */
    CaretLine of(int start, int end) {
      // far more than can be shown, combining marks and all, however long the line
      int from = boundary(Math.max(line.start(), start - 4 * room));
      int to = boundary(Math.min(line.end(), start + 4 * room));
      List<Glyph> glyphs = glyphs(from, to);
      boolean whole = from == line.start() && to == line.end();
      int caretEnd = cells(glyphs, from, start) + 1;
      if (whole && Math.max(cells(glyphs, from, to), caretEnd) <= room) {
        return shown(glyphs, new Span(from, to), start, end);
      }
      int first = firstShown(glyphs, start);
      int mark = first > line.start() ? 1 : 0;
      int last = lastShown(glyphs, first, to, room - mark);
      return shown(glyphs, new Span(first, Math.max(last, start)), start, end);
    }

    private CaretLine shown(List<Glyph> glyphs, Span part, int start, int end) {
      boolean cutBefore = part.start() > line.start();
      boolean cutAfter = part.end() < line.end();
      StringBuilder out = new StringBuilder(cutBefore ? CUT : "");
      for (Glyph glyph : glyphs) {
        out.append(part.contains(glyph.offset) ? glyph.shown : "");
      }
      int before = cells(glyphs, part.start(), start) + (cutBefore ? 1 : 0);
      int carets = cells(glyphs, start, Math.min(end, part.end()));
      return new CaretLine(out + (cutAfter ? CUT : ""), before, Math.max(1, carets));
    }

    /** The first character that leaves a third of the room before the value. */
    private int firstShown(List<Glyph> glyphs, int start) {
      int left = room / 3;
      int first = start;
      for (int i = glyphs.size() - 1; i >= 0; i--) {
        Glyph glyph = glyphs.get(i);
        if (glyph.offset >= start) {
          continue;
        }
        left -= glyph.cells;
        if (left < 0) {
          return first;
        }
        first = glyph.cells > 0 ? glyph.offset : first;
      }
      return first;
    }

    /** The end of what still fits, a cell left for the mark of a cut. */
    private int lastShown(List<Glyph> glyphs, int first, int to, int cells) {
      int left = cells;
      for (Glyph glyph : glyphs) {
        left -= glyph.offset < first ? 0 : glyph.cells;
        if (left < (isLast(glyph) ? 0 : 1)) {
          return glyph.offset;
        }
      }
      return to;
    }

    private boolean isLast(Glyph glyph) {
      return text.offsetByCodePoints(glyph.offset, 1) == line.end();
    }

    private List<Glyph> glyphs(int from, int to) {
      List<Glyph> glyphs = new ArrayList<>(to - from);
      int column = 0;
      int last = ' ';
      for (int at = from; at < to; at += Character.charCount(text.codePointAt(at))) {
        int code = text.codePointAt(at);
        String shown = code == '\t' ? " ".repeat(TAB - column % TAB) : Printable.of(code);
        boolean one = shown.codePointCount(0, shown.length()) == 1;
        int cells = one ? Printable.width(shown.codePointAt(0), last) : shown.length();
        glyphs.add(new Glyph(at, shown, cells));
        column += cells;
        last = cells > 0 ? shown.codePointBefore(shown.length()) : last;
      }
      return glyphs;
    }

    /** Moves off the middle of a surrogate pair. */
    private int boundary(int at) {
      boolean middle =
          at > line.start()
              && at < line.end()
              && Character.isLowSurrogate(text.charAt(at))
              && Character.isHighSurrogate(text.charAt(at - 1));
      return middle ? at - 1 : at;
    }

    private static int cells(List<Glyph> glyphs, int from, int to) {
      int cells = 0;
      for (Glyph glyph : glyphs) {
        cells += glyph.offset >= from && glyph.offset < to ? glyph.cells : 0;
      }
      return cells;
    }
  }
}
