package deadband.reading;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.meterlog.Assembly;
import deadband.meterlog.Heading;
import deadband.meterlog.LogUnit;
import deadband.meterlog.Meaning;
import deadband.meterlog.MeterLog;
import deadband.meterlog.Readings;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A log as CSV: several header lines, parted by comma, semicolon or tab, decimals either way, one
 * meter or several told apart by a column.
 */
final class LogCsv {

  /** Rows that show what the columns are. */
  private static final int SHOWN = 200;

  private static final int HEAD_CHARS = 1 << 15;

  /** A row as long as this has a quote that is never closed. */
  private static final int LONGEST = 1 << 20;

  private static final Pattern TOTAL =
      Pattern.compile("(?i)\\s*(total|sum|summe|gesamt|totaal|average|mean|mittelwert|somme).*");

  private final String name;
  private final LogOptions options;
  private final Source source;
  private final LogClock clock = new LogClock();
  private final Map<String, Readings> meters = new LinkedHashMap<>();
  private final Map<String, LogUnit> units = new HashMap<>();
  private int totals;
  private int notTimes;
  private int notNumbers;
  private int rows;
  private long day_s;
  private @Nullable Problem firstNotTime;
  private @Nullable Problem firstNotNumber;

  LogCsv(String name, LogOptions options) {
    this.name = name;
    this.options = options;
    this.source = Source.named(name);
  }

  LogReading read(InputStream in, Charset charset) throws IOException {
    BufferedReader text = new BufferedReader(new InputStreamReader(in, charset), HEAD_CHARS);
    try {
      return read(records(text).iterator());
    } catch (CsvParseException | UncheckedIOException torn) {
      return LogReading.unreadable(
          Problem.of(
              source,
              Kind.QUOTE_NOT_CLOSED,
              "a row that does not end, after " + rows + " rows",
              "a second quote on the same line, or none"));
    }
  }

  private static CsvReader<CsvRecord> records(BufferedReader text) throws IOException {
    text.mark(HEAD_CHARS);
    char[] head = new char[HEAD_CHARS];
    int length = Math.max(0, text.read(head, 0, HEAD_CHARS - 1));
    text.reset();
    if (length > 0 && head[0] == Source.MARK) {
      text.skip(1);
    }
    return CsvReader.builder()
        .fieldSeparator(separator(new String(head, 0, length)))
        .commentStrategy(CommentStrategy.SKIP)
        .allowExtraFields(true)
        .allowMissingFields(true)
        .allowExtraCharsAfterClosingQuote(true)
        .maxBufferSize(LONGEST)
        .ofCsvRecord(text);
  }

  /** The mark that most lines hold equally often. */
  private static char separator(String head) {
    List<String> lines = head.lines().filter(line -> !line.isBlank()).limit(SHOWN).toList();
    char best = ',';
    long most = 0;
    for (char mark : new char[] {';', '\t', ',', '|'}) {
      Map<Long, Long> counts =
          lines.stream()
              .map(line -> line.chars().filter(c -> c == mark).count())
              .filter(count -> count > 0)
              .collect(Collectors.groupingBy(count -> count, Collectors.counting()));
      long agree = counts.values().stream().mapToLong(Long::longValue).max().orElse(0);
      if (agree > most) {
        most = agree;
        best = mark;
      }
    }
    return best;
  }

  private LogReading read(Iterator<CsvRecord> records) {
    List<List<String>> shown = new ArrayList<>();
    List<Long> lines = new ArrayList<>();
    while (records.hasNext() && shown.size() < SHOWN) {
      CsvRecord record = records.next();
      List<String> cells = record.getFields().stream().map(String::strip).toList();
      if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
        shown.add(cells);
        lines.add(record.getStartingLineNumber());
      }
    }
    LogTable table = LogTable.of(shown, options);
    if (table == null) {
      return noTable(shown);
    }
    for (int row = table.firstRow(); row < shown.size(); row++) {
      take(table, shown.get(row), lines.get(row));
    }
    while (records.hasNext()) {
      CsvRecord record = records.next();
      take(table, record.getFields(), record.getStartingLineNumber());
    }
    return finished(table);
  }

  private LogReading noTable(List<List<String>> shown) {
    String first = shown.isEmpty() ? "no row" : Source.shortened(String.join(",", shown.get(0)));
    return LogReading.unreadable(
        Problem.of(
            source,
            Kind.NOT_FITTING,
            first,
            "a header that names its columns with units, and rows with a time and a number, such as"
                + " time,grid_kW and 2026-04-21 07:00,-0.41"));
  }

  private void take(LogTable table, List<String> cells, long line) {
    String time = table.time(cells);
    if (time.isEmpty() && cells.stream().allMatch(String::isBlank)) {
      return;
    }
    if (!clock.take(time)) {
      notTime(time, line, cells);
      return;
    }
    String meter = table.meter(cells);
    Readings readings = meters.get(meter);
    if (readings == null) {
      readings =
          new Readings(
              name, table.headings(), !clock.hasOffsets(), clock.dates() != LogClock.Dates.NONE);
      meters.put(meter, readings);
      units.put(meter, table.unit(cells));
    }
    double[] values = table.values(cells);
    for (int column = 0; column < values.length; column++) {
      if (Double.isInfinite(values[column])) {
        notNumber(table, column, cells, line);
        values[column] = Double.NaN;
      }
    }
    readings.add(instant_s(readings), clock.clock_s(), values);
    clock.kept(readings.rows() - 1);
    rows++;
  }

  /** Times of day alone run on through midnight. */
  private long instant_s(Readings readings) {
    if (clock.dates() != LogClock.Dates.NONE) {
      return clock.instant_s();
    }
    int last = readings.rows() - 1;
    if (last >= 0 && clock.instant_s() + day_s < readings.at_s(last) - 43_200) {
      day_s += 86_400;
    }
    return clock.instant_s() + day_s;
  }

  private void notTime(String time, long line, List<String> cells) {
    if (cells.stream().anyMatch(cell -> TOTAL.matcher(cell).matches())) {
      totals++;
      return;
    }
    notTimes++;
    if (firstNotTime == null) {
      firstNotTime =
          Problem.of(
              source,
              Kind.NOT_A_TIME,
              "line " + line + ": " + Source.shortened(time),
              "2026-04-21 07:00, 21/04/2026 07:00, 2026-04-21T07:00+02:00 or epoch seconds, the"
                  + " same kind throughout");
    }
  }

  private void notNumber(LogTable table, int column, List<String> cells, long line) {
    notNumbers++;
    if (firstNotNumber == null) {
      firstNotNumber =
          Problem.of(
              source,
              Kind.WRONG_KIND,
              "line "
                  + line
                  + ", "
                  + table.headings().get(column).name()
                  + ": "
                  + Source.shortened(table.cell(cells, column)),
              "a number such as 3.5, decimals written alike throughout");
    }
  }

  private LogReading finished(LogTable table) {
    // a stray row is left out and said; a file of them is not understood
    long few = Math.max(3, rows / 100);
    List<Problem> problems = new ArrayList<>();
    if (firstNotTime != null && notTimes > few) {
      problems.add(firstNotTime);
    }
    if (firstNotNumber != null && notNumbers > few) {
      problems.add(firstNotNumber);
    }
    if (problems.isEmpty() && meters.values().stream().noneMatch(meter -> meter.rows() > 1)) {
      problems.add(Problem.of(source, Kind.MISSING, rows + " readings", "two readings or more"));
    }
    if (!problems.isEmpty()) {
      return new LogReading.Unreadable(name, problems);
    }
    meters.values().forEach(clock::settle);
    return meters.size() == 1 ? read(meters.values().iterator().next(), table) : several(table);
  }

  private LogReading several(LogTable table) {
    String wanted = options.meter().orElse("");
    if (meters.containsKey(wanted)) {
      return read(meters.get(wanted), table);
    }
    Map<String, Heading> named = new LinkedHashMap<>();
    if (table.headings().size() == 1 && wanted.isEmpty()) {
      meters.keySet().forEach(meter -> named.put(meter, heading(meter, table)));
      named.values().removeIf(heading -> heading.meaning() == Meaning.UNKNOWN);
    }
    if (named.isEmpty()) {
      return LogReading.unreadable(
          Problem.of(
              source,
              Kind.NOT_FITTING,
              meters.size()
                  + " meters"
                  + (wanted.isEmpty() ? "" : ", none " + wanted)
                  + ": "
                  + Source.shortened(String.join(", ", meters.keySet())),
              "--meter with one of them"));
    }
    return joined(table, named);
  }

  /**
   * A meter's heading: its unit by its own name, by a column of units, or by the values' header.
   */
  private Heading heading(String meter, LogTable table) {
    Heading named = LogWords.heading(meter, options);
    LogUnit unit = units.getOrDefault(meter, LogUnit.NONE);
    LogUnit values = table.headings().get(0).unit();
    boolean powers = !named.meaning().isTemperature();
    LogUnit shown =
        unit != LogUnit.NONE ? unit : powers && values != LogUnit.NONE ? values : named.unit();
    return new Heading(meter, named.meaning(), shown, "by the meter's name");
  }

  private LogReading joined(LogTable table, Map<String, Heading> named) {
    MeterLog all = null;
    List<String> skipped = skipped(table);
    for (Map.Entry<String, Readings> meter : meters.entrySet()) {
      Heading heading = named.get(meter.getKey());
      if (heading == null || meter.getValue().rows() < 2) {
        skipped.add(
            "meter " + meter.getKey() + " left out: its name does not say what it measures");
        continue;
      }
      MeterLog log = Assembly.of(meter.getValue().headed(List.of(heading)));
      all = all == null ? log : all.with(log);
    }
    return all == null ? noTable(List.of()) : new LogReading.Read(name, all, skipped);
  }

  private LogReading read(Readings readings, LogTable table) {
    return new LogReading.Read(
        name,
        Assembly.of(readings.headed(LogTable.guessed(readings.headings(), name))),
        skipped(table));
  }

  private List<String> skipped(LogTable table) {
    List<String> skipped = new ArrayList<>();
    if (table.firstRow() > 1) {
      skipped.add(table.firstRow() + " header lines");
    }
    count(skipped, totals, "row with a total", "rows with totals");
    count(skipped, notTimes, "row without a time", "rows without a time");
    count(skipped, notNumbers, "cell that is not a number", "cells that are not numbers");
    if (clock.dates() == LogClock.Dates.OPEN) {
      skipped.add("dates taken as day/month/year: no row shows which");
    }
    return skipped;
  }

  private static void count(List<String> skipped, int count, String one, String many) {
    if (count > 0) {
      skipped.add(count + " " + (count == 1 ? one : many) + " left out");
    }
  }
}
