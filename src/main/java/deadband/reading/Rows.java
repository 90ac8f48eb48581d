package deadband.reading;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import deadband.document.Source;
import deadband.document.Span;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;

/**
 * The rows of a CSV text (RFC 4180, but parted by comma, semicolon or tab, whichever the first row
 * uses), and where each cell stands. Blank rows and comments are passed over.
 */
final class Rows implements Iterable<Rows.Row> {

  private static final char MARK = Source.MARK;
  private static final char QUOTE = '"';

  /** Longer than any row of a day: a quote that is never closed ends here. */
  private static final int LONGEST = 1 << 26;

  private final Source source;
  private final char separator;

  Rows(Source source) {
    this.source = source;
    this.separator = separator(firstLine(source));
  }

  /**
   * One row.
   *
   * @param line the line it begins on, from 1
   * @param cells what stands in each, without blanks around it
   */
  record Row(int line, List<String> cells) {
    boolean isBlank() {
      return cells.stream().allMatch(String::isEmpty);
    }

    /** Whether a cell runs over the end of its line, as no value of a day does. */
    boolean isTorn() {
      return cells.stream().anyMatch(cell -> cell.indexOf('\n') >= 0 || cell.indexOf('\r') >= 0);
    }
  }

  /** Whether columns are parted by commas, so that no number may hold one. */
  boolean partedByComma() {
    return separator == ',';
  }

  private static String firstLine(Source source) {
    for (int line = 1; line <= source.lines(); line++) {
      String text = source.line(line);
      if (!text.isBlank() && !text.startsWith("#")) {
        return text;
      }
    }
    return "";
  }

  private static char separator(String line) {
    if (line.indexOf(';') >= 0) {
      return ';';
    }
    return line.indexOf('\t') >= 0 ? '\t' : ',';
  }

  @Override
  public Iterator<Row> iterator() {
    String text = source.text();
    Iterator<CsvRecord> records =
        CsvReader.builder()
            .fieldSeparator(separator)
            .quoteCharacter(QUOTE)
            .commentStrategy(CommentStrategy.SKIP)
            .allowExtraFields(true)
            .allowMissingFields(true)
            .allowExtraCharsAfterClosingQuote(true)
            .maxBufferSize(LONGEST)
            .ofCsvRecord(text.indexOf(MARK) == 0 ? text.substring(1) : text)
            .iterator();
    return new Inked(records);
  }

  /** The rows that hold something. */
  private static final class Inked implements Iterator<Row> {
    private final Iterator<CsvRecord> records;
    private Row next = NONE;

    private static final Row NONE = new Row(0, List.of());

    Inked(Iterator<CsvRecord> records) {
      this.records = records;
      advance();
    }

    private void advance() {
      next = NONE;
      while (next.isBlank() && records.hasNext()) {
        next = row(records.next());
      }
    }

    private static Row row(CsvRecord read) {
      String[] cells = new String[read.getFieldCount()];
      for (int index = 0; index < cells.length; index++) {
        cells[index] = unquoted(read.getField(index).strip());
      }
      return new Row((int) read.getStartingLineNumber(), List.of(cells));
    }

    /** Takes off the quotes of a cell that has blanks before them. */
    private static String unquoted(String cell) {
      boolean quoted = cell.length() > 1 && cell.charAt(0) == QUOTE && cell.endsWith("\"");
      return quoted ? cell.substring(1, cell.length() - 1).strip() : cell;
    }

    @Override
    public boolean hasNext() {
      return !next.isBlank();
    }

    @Override
    public Row next() {
      if (next.isBlank()) {
        throw new NoSuchElementException();
      }
      Row row = next;
      advance();
      return row;
    }
  }

  /** Where a row stands. */
  Span at(int line) {
    return source.lineSpan(line);
  }

  /**
   * Where a cell stands, without blanks and quotes around it; at the row's end if it is missing.
   */
  Span at(int line, int index) {
    Span row = source.lineSpan(line);
    int start = row.start();
    for (int cell = 0; cell < index; cell++) {
      start = cellEnd(start, row.end()) + 1;
    }
    return start > row.end() ? Span.at(row.end()) : inner(start, cellEnd(start, row.end()));
  }

  private int cellEnd(int start, int rowEnd) {
    boolean quoted = false;
    for (int at = start; at < rowEnd; at++) {
      char c = source.text().charAt(at);
      quoted ^= c == QUOTE;
      if (c == separator && !quoted) {
        return at;
      }
    }
    return rowEnd;
  }

  private Span inner(int start, int end) {
    int from = start;
    int until = end;
    while (from < until && isAround(source.text().charAt(from))) {
      from++;
    }
    while (until > from && isAround(source.text().charAt(until - 1))) {
      until--;
    }
    return new Span(from, until);
  }

  private static boolean isAround(char c) {
    return c == QUOTE || Character.isWhitespace(c);
  }
}
