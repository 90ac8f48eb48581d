package deadband.judging;

import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a house, read or not: DRL files in a folder that judge next to the built-in rules.
 *
 * <p>A house rule says of itself what a page says of a built-in check: {@code @consequence},
 * {@code @title} and {@code @why}. It joins facts and reports a case by {@code found( kcontext,
 * $case )}. DRL is code: it runs with the rights of who runs the program.
 *
 * <p>Compiling needs jars that the program does not load otherwise; see {@link #canBeCompiled()}.
 */
public sealed interface HouseRules {

  /**
   * A rule book in which they stand.
   *
   * @param rules how many there are
   */
  record Read(RuleBook book, int rules) implements HouseRules {}

  /**
   * Rules that cannot be used.
   *
   * @param problems at least one, file by file
   */
  record Unreadable(List<Problem> problems) implements HouseRules {

    public Unreadable {
      problems = List.copyOf(problems);
    }
  }

  /** Whether the rule compiler is there. */
  static boolean canBeCompiled() {
    ClassLoader loader = HouseRules.class.getClassLoader();
    return Stream.of("org/drools/drl/parser/DrlParser.class", "org/mvel2/MVEL.class")
        .allMatch(resource -> loader.getResource(resource) != null);
  }

  /** Largest file of rules [bytes]; a rule is a dozen lines. */
  int MOST_BYTES = 1_000_000;

  /** Time in which a rule book's worth of rules compiles many times over. */
  Duration COMPILED_WITHIN = Duration.ofMinutes(1);

  /** Reads and compiles every file of a folder, and of the folders in it, that ends in .drl. */
  static HouseRules in(Path folder) {
    return in(folder, COMPILED_WITHIN);
  }

  /** The same, with a time limit of the caller's. */
  static HouseRules in(Path folder, Duration limit) {
    Source named = Source.named(folder.toString());
    if (!Files.isDirectory(folder)) {
      return refused(
          Problem.of(named, Kind.NO_SUCH_FILE, "no folder of that name", "a folder of DRL files"));
    }
    List<Source> sources = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    try (Stream<Path> files = Files.walk(folder)) {
      List<Path> rules =
          files.filter(file -> file.getFileName().toString().endsWith(".drl")).sorted().toList();
      rules.forEach(file -> read(file, sources, problems));
    } catch (IOException | UncheckedIOException e) {
      problems.add(Problem.of(named, Kind.NOT_READABLE, e.toString(), "a folder to be read"));
    }
    if (sources.isEmpty() && problems.isEmpty()) {
      return refused(
          Problem.of(named, Kind.EMPTY, "no file that ends in .drl", "one file or more"));
    }
    return problems.isEmpty()
        ? HouseCompiler.compiled(named, sources, limit)
        : new Unreadable(problems);
  }

  private static void read(Path file, List<Source> sources, List<Problem> problems) {
    Source named = Source.named(file.toString());
    try {
      Problem refusal = refusal(named, Files.readAttributes(file, BasicFileAttributes.class));
      if (refusal != null) {
        problems.add(refusal);
        return;
      }
      sources.add(Source.of(file.toString(), Files.readString(file)));
    } catch (MalformedInputException e) {
      problems.add(Problem.of(named, Kind.NOT_UTF8, "other bytes", "a file in UTF-8"));
    } catch (IOException | UncheckedIOException e) {
      problems.add(Problem.of(named, Kind.NOT_READABLE, e.toString(), "a file to be read"));
    }
  }

  /** Why a thing of that sort is not read; null for a plain file of sensible size. */
  private static @Nullable Problem refusal(Source named, BasicFileAttributes file) {
    if (!file.isRegularFile()) {
      return Problem.of(named, Kind.NOT_A_FILE, "a folder, a device or a pipe", "a plain file");
    }
    return file.size() <= MOST_BYTES
        ? null
        : Problem.of(named, Kind.TOO_LARGE, "more than 1 MB", "at most 1 MB");
  }

  private static HouseRules refused(Problem problem) {
    return new Unreadable(List.of(problem));
  }
}
