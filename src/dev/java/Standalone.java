import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/**
 * Makes of the folder that is shipped one with a Java of its own: a runtime with the modules that
 * the jars need, and a class archive made by that runtime on the jars as they lie there. Run by
 * {@code mvn -P standalone package}: {@code java src/dev/java/Standalone.java FROM TO}.
 */
final class Standalone {

  private static final List<String> QUIET =
      List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xlog:disable");

  private final Path from;
  private final Path to;

  private Standalone(Path from, Path to) {
    this.from = from;
    this.to = to;
  }

  public static void main(String[] words) throws Exception {
    if (words.length != 2) {
      System.err.println("java src/dev/java/Standalone.java FROM TO");
      System.exit(2);
    }
    new Standalone(Path.of(words[0]), Path.of(words[1])).make();
  }

  private void make() throws Exception {
    if (Files.exists(to)) {
      delete(to);
    }
    copy();
    link();
    archive();
    System.out.printf("%s: %.0f MB%n", to, size(to) / 1e6);
  }

  private void copy() throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path each : (Iterable<Path>) all::iterator) {
        // the archive knows its jars by size and time of change
        Files.copy(
            each, to.resolve(from.relativize(each).toString()), StandardCopyOption.COPY_ATTRIBUTES);
      }
    }
  }

  private void link() {
    tool(
        "jlink",
        "--add-modules",
        modules(),
        "--strip-debug",
        "--no-header-files",
        "--no-man-pages",
        "--compress",
        Runtime.version().feature() < 21 ? "2" : "zip-6",
        "--output",
        to.resolve("runtime").toString());
  }

  /** The modules of Java that the jars need, those of house rules among them. */
  private String modules() {
    List<String> jars = new ArrayList<>(jars(to.resolve("lib")));
    jars.addAll(jars(to.resolve("lib/house")));
    List<String> words =
        new ArrayList<>(
            List.of("--ignore-missing-deps", "--multi-release", "17", "-q", "--print-module-deps"));
    words.add("--class-path");
    words.add(String.join(java.io.File.pathSeparator, jars));
    words.addAll(jars);
    return tool("jdeps", words.toArray(String[]::new)).strip();
  }

  private static List<String> jars(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(Path::toString).filter(file -> file.endsWith(".jar")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String tool(String name, String... words) {
    StringWriter out = new StringWriter();
    PrintWriter said = new PrintWriter(out, true);
    int exit = ToolProvider.findFirst(name).orElseThrow().run(said, said, words);
    if (exit != 0) {
      throw new IllegalStateException(name + " ended with " + exit + ": " + out);
    }
    return out.toString();
  }

  /** The archive of the runtime, then of the program, by the commands that are used by hand. */
  private void archive() throws Exception {
    Path home = to.toRealPath();
    String archive = home.resolve("lib/deadband.jsa").toString();
    java(List.of("-Xshare:dump"));
    java(practice(home, "-XX:ArchiveClassesAtExit=" + archive));
    // with archives alone: ends with an error where they cannot be used
    java(practice(home, "-Xshare:on", "-XX:SharedArchiveFile=" + archive));
    String place = Runtime.version().feature() < 19 ? home.toString() : "anywhere";
    Files.writeString(home.resolve("lib/deadband.place"), place + "\n");
  }

  private static List<String> practice(Path home, String... options) {
    List<String> words = new ArrayList<>(QUIET);
    words.addAll(List.of(options));
    words.addAll(List.of("-cp", home.resolve("lib/deadband.jar").toString()));
    words.addAll(List.of("deadband.cli.Practice", home.resolve("lib/training.json").toString()));
    return words;
  }

  private void java(List<String> words) throws Exception {
    List<String> command = new ArrayList<>();
    boolean windows = System.getProperty("os.name").startsWith("Windows");
    command.add(
        to.resolve("runtime/bin/java" + (windows ? ".exe" : "")).toAbsolutePath().toString());
    command.addAll(words);
    Path said = Files.createTempFile("standalone", ".txt");
    int exit =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start()
            .waitFor();
    if (exit != 0) {
      throw new IllegalStateException(
          command + " ended with " + exit + ": " + Files.readString(said));
    }
    Files.delete(said);
  }

  private static long size(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).mapToLong(file -> file.toFile().length()).sum();
    }
  }

  private static void delete(Path folder) throws IOException {
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path emptied, IOException failure)
              throws IOException {
            Files.delete(emptied);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
