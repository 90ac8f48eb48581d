package deadband.cli;

import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.reading.SetupReading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * The setup files in a folder and in the folders within it: those that end in {@code .json} or
 * {@code .jsonc}, in capitals or not. What is passed over is remembered, so that it can be said.
 */
final class SetupFiles {

  private static final int NAMED = 3;

  private final Path folder;
  private final Predicate<Path> passed;
  private final List<Path> setups = new ArrayList<>();
  private final List<SetupReading> closed = new ArrayList<>();
  private final TreeMap<String, List<String>> skipped = new TreeMap<>();

  private SetupFiles(Path folder, Predicate<Path> passed) {
    this.folder = folder;
    this.passed = passed;
  }

  /**
   * Looks through a folder.
   *
   * @param passed folders within it that hold equipment files and no setups
   */
  static SetupFiles in(Path folder, Predicate<Path> passed) {
    SetupFiles files = new SetupFiles(folder, passed);
    try {
      Files.walkFileTree(folder, files.new Visitor());
    } catch (IOException e) {
      throw new UncheckedIOException("the folder " + folder + " cannot be listed", e);
    }
    return files;
  }

  /** The setup files by name; a folder without one stands for itself, and reading it says so. */
  List<Path> setups() {
    return setups.isEmpty() && closed.isEmpty()
        ? List.of(folder)
        : setups.stream().sorted().toList();
  }

  /** The folders that could not be looked into. */
  List<SetupReading> closed() {
    return closed;
  }

  /** What was passed over, and why: a line a reason. */
  List<String> skipped() {
    return skipped.entrySet().stream()
        .map(entry -> folder + ": skipped " + names(entry.getValue()) + " (" + entry.getKey() + ")")
        .toList();
  }

  private static String names(List<String> all) {
    List<String> sorted = all.stream().sorted().toList();
    String named = String.join(", ", sorted.subList(0, Math.min(NAMED, sorted.size())));
    return sorted.size() <= NAMED ? named : named + " and " + (sorted.size() - NAMED) + " more";
  }

  private void skip(Path file, String why) {
    skipped.computeIfAbsent(why, each -> new ArrayList<>()).add(folder.relativize(file).toString());
  }

  private void take(Path file) {
    if (Files.isSymbolicLink(file) && !Files.exists(file)) {
      skip(file, "a link to nothing");
    } else if (Files.isDirectory(file)) {
      skip(file, "a link to a folder");
    } else if (!isSetup(file)) {
      skip(file, "not .json");
    } else if (!Files.isRegularFile(file)) {
      skip(file, "a device or a pipe");
    } else {
      setups.add(file);
    }
  }

  private static boolean isSetup(Path path) {
    String file = path.getFileName().toString().toLowerCase(Locale.ROOT);
    return file.endsWith(".json") || file.endsWith(".jsonc");
  }

  private final class Visitor extends SimpleFileVisitor<Path> {

    @Override
    public FileVisitResult preVisitDirectory(Path within, BasicFileAttributes attributes) {
      if (within.equals(folder) || !passed.test(within)) {
        return FileVisitResult.CONTINUE;
      }
      skip(within, "equipment files");
      return FileVisitResult.SKIP_SUBTREE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
      take(file);
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException failure) {
      if (Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
        closed.add(unreadable(file));
      } else {
        take(file);
      }
      return FileVisitResult.CONTINUE;
    }

    private SetupReading unreadable(Path file) {
      Problem problem =
          Problem.of(
              Source.named(file.toString()),
              Kind.NO_PERMISSION,
              "a folder that cannot be looked into",
              "a folder that you may read");
      return new SetupReading.Unreadable(file.toString(), List.of(problem));
    }
  }
}
