package deadband;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.UnaryOperator;

/**
 * A file of the project, or a part of one, that holds what the program prints. Its tests carry the
 * tag {@code snapshot}; {@code mvn -P bless test} runs them alone and writes again what differs.
 */
public final class Snapshot {

  private static final boolean BLESSING = Boolean.getBoolean("deadband.bless");

  private Snapshot() {}

  /** The file holds this text. */
  public static void isKept(Path file, String now) {
    isKept(file, now, UnaryOperator.identity());
  }

  /**
   * The file holds this text, as far as it is compared.
   *
   * @param compared what of both texts is compared; a file that agrees in that is not written
   */
  public static void isKept(Path file, String now, UnaryOperator<String> compared) {
    if (BLESSING && !agree(now, Files.exists(file) ? read(file) : "", compared)) {
      write(file, now);
    }
    compare(file, now, read(file), compared);
  }

  /** The file holds this text between two marks. */
  public static void isKeptBetween(
      String begin, String end, Path file, String now, UnaryOperator<String> compared) {
    String page = read(file);
    int from = page.indexOf(begin) + begin.length();
    int to = page.indexOf(end, from);
    assertThat(page.indexOf(begin)).as("%s has the mark %s", file, begin).isNotNegative();
    assertThat(to).as("%s has the mark %s", file, end).isNotNegative();
    String kept = page.substring(from, to);
    if (BLESSING && !agree(now, kept, compared)) {
      write(file, page.substring(0, from) + now + page.substring(to));
      kept = now;
    }
    compare(file, now, kept, compared);
  }

  /**
   * A report without what hangs on how many checks there are, and on their edition: a new check
   * that finds nothing changes no report.
   */
  public static String apartFromRuleBook(String report) {
    return report
        .replaceAll("\\b\\d+ (checks|clear|not fitted)\\b", "# $1")
        .replaceAll("edition [-0-9]+", "edition #")
        .replaceAll("\"(checks|clear|clearOnAssumption|notFitted)\":( ?)\\d+", "\"$1\":$2#")
        .replaceAll("\"(clear|notFitted)\":( ?)\\[[^\\]]*]", "\"$1\":$2[]")
        .replaceAll("\"edition\":( ?)\"[^\"]*\"", "\"edition\":$1\"#\"");
  }

  private static boolean agree(String now, String kept, UnaryOperator<String> compared) {
    return compared.apply(now).equals(compared.apply(kept));
  }

  private static void compare(Path file, String now, String kept, UnaryOperator<String> compared) {
    assertThat(compared.apply(now))
        .as("%s holds something else; where the change is right: mvn -P bless test", file)
        .isEqualTo(compared.apply(kept));
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void write(Path file, String text) {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
