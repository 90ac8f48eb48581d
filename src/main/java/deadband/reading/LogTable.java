package deadband.reading;

import deadband.meterlog.Heading;
import deadband.meterlog.LogUnit;
import deadband.meterlog.Meaning;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Which column of a CSV holds what, found from its first rows.
 *
 * @param firstRow index of the first row with a reading
 * @param date column of the time, or of its date
 * @param time column of the time of day where it is apart, or −1
 * @param meter column that tells meters apart, or −1
 * @param units column of each row's unit, or −1
 * @param indices of the columns with values
 * @param headings of these
 */
record LogTable(
    int firstRow,
    int date,
    int time,
    int meter,
    int units,
    List<Integer> indices,
    List<Heading> headings,
    LogNumbers numbers) {

  /** The table of a file; null where no row has a time and a number below a header. */
  static @Nullable LogTable of(List<List<String>> shown, LogOptions options) {
    for (int row = 1; row < shown.size(); row++) {
      int at = timeColumn(shown.get(row));
      if (at >= 0 && hasNumber(shown.get(row), at)) {
        return below(shown, row, at, options);
      }
    }
    return null;
  }

  private static int timeColumn(List<String> cells) {
    return IntStream.range(0, cells.size())
        .filter(index -> isTime(cells.get(index)))
        .findFirst()
        .orElse(-1);
  }

  private static boolean isTime(String cell) {
    LogClock clock = new LogClock();
    return clock.take(cell) || new LogClock().take(cell + " 00:00");
  }

  private static boolean hasNumber(List<String> cells, int time) {
    LogNumbers numbers = LogNumbers.by(cells);
    return IntStream.range(0, cells.size())
        .anyMatch(index -> index != time && Double.isFinite(numbers.of(cells.get(index))));
  }

  private static @Nullable LogTable below(
      List<List<String>> shown, int row, int at, LogOptions options) {
    List<String> first = shown.get(row);
    List<String> names = names(shown, row);
    if (names.isEmpty()) {
      return null;
    }
    int date = beginning(names, first, at);
    int time = timeOfDay(first, date);
    int meter = column(names, LogWords::isMeter, date);
    int units = column(names, LogWords::isUnits, date);
    List<Integer> indices = new ArrayList<>();
    List<Heading> headings = new ArrayList<>();
    List<List<String>> rows = shown.subList(row, shown.size());
    LogNumbers numbers = LogNumbers.by(sample(rows, date, time));
    for (int index = 0; index < names.size(); index++) {
      boolean value = index != date && index != time && index != meter && index != units;
      if (value && !isTimeColumn(first, index) && holdsNumbers(rows, index, numbers)) {
        indices.add(index);
        headings.add(LogWords.heading(names.get(index), options));
      }
    }
    return indices.isEmpty()
        ? null
        : new LogTable(
            row,
            date,
            time,
            meter,
            units,
            indices,
            headings,
            numbers.grouped(wholeWatts(rows, indices, headings)));
  }

  /** The first column with such a name, or −1. */
  private static int column(List<String> names, Predicate<String> such, int not) {
    return IntStream.range(0, names.size())
        .filter(index -> index != not && such.test(names.get(index)))
        .findFirst()
        .orElse(-1);
  }

  /** The cells under W and Wh, whose thousands may be marked by a point. */
  private static List<String> wholeWatts(
      List<List<String>> rows, List<Integer> indices, List<Heading> headings) {
    List<String> cells = new ArrayList<>();
    for (int column = 0; column < indices.size(); column++) {
      LogUnit unit = headings.get(column).unit();
      if (unit == LogUnit.W || unit == LogUnit.WH) {
        for (List<String> row : rows) {
          cells.add(at(row, indices.get(column)));
        }
      }
    }
    return cells;
  }

  private static boolean isTimeColumn(List<String> cells, int index) {
    return index < cells.size()
        && cells.get(index).chars().anyMatch(c -> c == ':' || c == '/' || c == 'T')
        && isTime(cells.get(index));
  }

  private static boolean holdsNumbers(List<List<String>> rows, int index, LogNumbers numbers) {
    long numeric =
        rows.stream()
            .filter(row -> index < row.size() && Double.isFinite(numbers.of(row.get(index))))
            .count();
    long other =
        rows.stream()
            .filter(row -> index < row.size() && Double.isInfinite(numbers.of(row.get(index))))
            .count();
    return numeric >= other;
  }

  private static List<String> sample(List<List<String>> rows, int date, int time) {
    List<String> cells = new ArrayList<>();
    for (List<String> row : rows) {
      for (int index = 0; index < row.size(); index++) {
        if (index != date && index != time) {
          cells.add(row.get(index));
        }
      }
    }
    return cells;
  }

  /** The names of the columns: of several header lines, those as wide as the rows below. */
  private static List<String> names(List<List<String>> shown, int row) {
    int width = shown.get(row).size();
    List<String> names = new ArrayList<>();
    for (int above = Math.max(0, row - 3); above < row; above++) {
      List<String> cells = shown.get(above);
      boolean wide =
          cells.size() >= width - 1 && cells.stream().filter(c -> !c.isEmpty()).count() > 1;
      for (int index = 0; wide && index < cells.size(); index++) {
        if (index >= names.size()) {
          names.add(cells.get(index));
        } else if (!cells.get(index).isEmpty()) {
          names.set(index, (names.get(index) + " " + cells.get(index)).strip());
        }
      }
    }
    return names;
  }

  /** Where both ends of an interval are given, its beginning. */
  private static int beginning(List<String> names, List<String> first, int at) {
    return IntStream.range(0, Math.min(names.size(), first.size()))
        .filter(index -> LogWords.isTime(names.get(index)) && isTime(first.get(index)))
        .filter(index -> !LogWords.isEndOfInterval(names.get(index)))
        .findFirst()
        .orElse(at);
  }

  /** A column of times of day beside one of dates alone. */
  private static int timeOfDay(List<String> first, int date) {
    boolean whole =
        first.get(date).indexOf(':') >= 0 || first.get(date).matches("\\d{9,}(\\.\\d+)?");
    return whole
        ? -1
        : IntStream.range(0, first.size())
            .filter(index -> first.get(index).matches("\\d{1,2}:\\d{2}(:\\d{2})?( ?[aApP][mM])?"))
            .findFirst()
            .orElse(-1);
  }

  /** Where only one column is a power and its name says nothing, the file's name may. */
  static List<Heading> guessed(List<Heading> headings, String file) {
    List<Heading> powers = headings.stream().filter(Heading::isPower).toList();
    Path path = Path.of(file).getFileName();
    Meaning meaning = LogWords.meaning(LogWords.plain(path == null ? file : path.toString()));
    boolean one = powers.size() == 1 && powers.get(0).meaning() == Meaning.UNKNOWN;
    if (!one || meaning == Meaning.UNKNOWN || meaning == Meaning.CALL) {
      return headings;
    }
    return headings.stream()
        .map(
            heading ->
                heading.equals(powers.get(0)) ? heading.as(meaning, "by the file's name") : heading)
        .toList();
  }

  String time(List<String> cells) {
    String on = at(cells, date);
    return time < 0 || on.isEmpty() ? on : on + " " + at(cells, time);
  }

  String meter(List<String> cells) {
    return meter < 0 ? "" : at(cells, meter);
  }

  /** The unit that a row gives. */
  LogUnit unit(List<String> cells) {
    return units < 0 ? LogUnit.NONE : LogWords.unit(at(cells, units));
  }

  String cell(List<String> cells, int column) {
    return at(cells, indices.get(column));
  }

  private static String at(List<String> cells, int index) {
    return index < cells.size() ? cells.get(index).strip() : "";
  }

  double[] values(List<String> cells) {
    double[] values = new double[indices.size()];
    for (int column = 0; column < values.length; column++) {
      values[column] = numbers.of(cell(cells, column), headings.get(column).unit());
    }
    return values;
  }
}
