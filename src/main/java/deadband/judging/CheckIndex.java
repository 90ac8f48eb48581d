package deadband.judging;

import deadband.facts.Case;
import deadband.facts.Condition;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The built-in checks as a table, a line each, which is written where the program is packed: to
 * list them, no rule has to be loaded and no page to be read. Where it is not there, it is not
 * missed.
 */
final class CheckIndex {

  private static final String FILE = "rules/checks.tsv";

  private CheckIndex() {}

  /**
   * A line of the table.
   *
   * @param headline of its page
   */
  record Entry(Check check, String headline) {}

  /** Writes the table to the file of this name. */
  public static void main(String[] words) throws IOException {
    Files.write(
        Path.of(words[0]), RuleBook.builtIn().checks().stream().map(CheckIndex::line).toList());
  }

  private static String line(Check check) {
    return String.join(
        "\t",
        check.name(),
        String.join(",", check.formerNames()),
        check.topic(),
        check.consequence().word(),
        String.valueOf(check.essential()),
        String.valueOf(check.askedOnAssumption()),
        String.join(",", check.causes()),
        check.caseType().getName(),
        String.join(",", check.conditions().stream().map(Class::getName).toList()),
        RulePage.of(check).says());
  }

  /** The table by the names of checks; empty where the program is not packed. */
  static Map<String, Entry> entries() {
    return Read.ENTRIES;
  }

  private static final class Read {
    static final Map<String, Entry> ENTRIES = entries(text());
  }

  static Map<String, Entry> entries(String text) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    text.lines().map(CheckIndex::entry).forEach(each -> entries.put(each.check().name(), each));
    return entries;
  }

  private static String text() {
    try (InputStream file = CheckIndex.class.getResourceAsStream(FILE)) {
      return file == null ? "" : new String(file.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("the list of checks cannot be read", e);
    }
  }

  private static Entry entry(String line) {
    String[] cells = line.split("\t", -1);
    Check check =
        new Check(
            cells[0],
            listed(cells[1]).toList(),
            cells[2],
            Consequence.of(cells[3]),
            Boolean.parseBoolean(cells[4]),
            Boolean.parseBoolean(cells[5]),
            listed(cells[6]).toList(),
            type(cells[7], Case.class),
            listed(cells[8])
                .<Class<? extends Condition>>map(name -> type(name, Condition.class))
                .toList(),
            null);
    return new Entry(check, cells[9]);
  }

  private static Stream<String> listed(String cell) {
    return cell.isEmpty() ? Stream.of() : Stream.of(cell.split(",", -1));
  }

  private static <T> Class<? extends T> type(String name, Class<T> kind) {
    try {
      return Class.forName(name, false, CheckIndex.class.getClassLoader()).asSubclass(kind);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException("the list of checks names what is not there: " + name, e);
    }
  }
}
