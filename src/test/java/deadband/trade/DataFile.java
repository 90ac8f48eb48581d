package deadband.trade;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/**
 * An open data file that is kept beside the project, not in it. The folder is named by the system
 * property {@code deadband.data}; where it is not there, the tests that need it are skipped and say
 * so.
 *
 * @param columns names of the columns
 * @param rows cells of each line after the header
 */
record DataFile(List<String> columns, List<List<String>> rows) {

  static DataFile read(String name) {
    Path file = Path.of(System.getProperty("deadband.data", "no such folder"), name);
    assumeTrue(Files.isRegularFile(file), "skipped: no " + name + " in the deadband.data folder");
    List<List<String>> lines = lines(file).stream().map(DataFile::cells).toList();
    return new DataFile(lines.get(0), lines.subList(1, lines.size()));
  }

  private static List<String> lines(Path file) {
    try {
      return Files.readAllLines(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> cells(String line) {
    return Arrays.asList(line.split(",", -1));
  }

  String text(int row, String column) {
    int index = columns.indexOf(column);
    if (index < 0) {
      throw new IllegalArgumentException("no column " + column + " in " + columns);
    }
    return rows.get(row).get(index);
  }

  double number(int row, String column) {
    return Double.parseDouble(text(row, column));
  }

  int size() {
    return rows.size();
  }
}
