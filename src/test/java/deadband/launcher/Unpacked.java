package deadband.launcher;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.nio.file.StandardCopyOption.COPY_ATTRIBUTES;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/**
 * A copy of what the build leaves for users, in a folder of its own with a cache of its own, and
 * the means to run its launcher there.
 */
final class Unpacked {
  static final Path BUILT =
      Path.of(System.getProperty("deadband.distribution", "target/deadband")).toAbsolutePath();

  private static final Duration PATIENCE = Duration.ofMinutes(5);

  private final Path folder;
  private final Path root;

  private Unpacked(Path folder, Path root) {
    this.folder = folder;
    this.root = root;
  }

  /** What a run gave. */
  record Result(int exit, String out, String err) {}

  /** Copies the built folder to {@code folder/name}. */
  static Unpacked into(Path folder, String name) {
    Path root = folder.resolve(name);
    copy(BUILT, root);
    return new Unpacked(folder, root);
  }

  /** The same copy with another home and another place to start from. */
  Unpacked seenFrom(Path other) {
    return new Unpacked(other, root);
  }

  Path launcher() {
    return root.resolve("bin/deadband");
  }

  Path libFolder() {
    return root.resolve("lib");
  }

  String sample() {
    return libFolder().resolve("training.json").toString();
  }

  Path cache() {
    return folder.resolve("home/.cache/deadband");
  }

  /** Where the runs of this class start, so that nothing lands in the project. */
  Path workplace() {
    return created(folder.resolve("workplace"));
  }

  /** The surroundings of a run: a usual path, a home, the Java that runs the tests, no more. */
  Map<String, String> surroundings() {
    Map<String, String> env = new LinkedHashMap<>();
    env.put("PATH", "/usr/local/bin:/usr/bin:/bin:/usr/sbin:/sbin");
    env.put("HOME", created(folder.resolve("home")).toString());
    env.put("JAVA_HOME", System.getProperty("java.home"));
    return env;
  }

  Result run(String... words) {
    return run(surroundings(), words);
  }

  Result run(Map<String, String> env, String... words) {
    List<String> command = new ArrayList<>(List.of(launcher().toString()));
    command.addAll(List.of(words));
    return execute(env, command);
  }

  Result check(Map<String, String> env) {
    return run(env, "check", sample());
  }

  Map<String, String> with(String name, String value) {
    Map<String, String> env = surroundings();
    env.put(name, value);
    return env;
  }

  Map<String, String> withoutArchive() {
    return with("DEADBAND_ARCHIVE", "off");
  }

  Map<String, String> offWith(Path java) {
    Map<String, String> env = withoutArchive();
    env.put("JAVA_HOME", java.toString());
    return env;
  }

  Result execute(Map<String, String> env, List<String> command) {
    try {
      return result(start(env, command));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  Process start(Map<String, String> env, List<String> command) throws IOException {
    ProcessBuilder builder = new ProcessBuilder(command).directory(workplace().toFile());
    builder.environment().clear();
    builder.environment().putAll(env);
    builder.redirectError(Files.createTempFile(folder, "run", ".err").toFile());
    return builder.start();
  }

  /** Waits for the run to end; standard error was sent to a file, so that neither can block. */
  private Result result(Process process) throws IOException, InterruptedException {
    process.getOutputStream().close();
    String out = new String(process.getInputStream().readAllBytes(), UTF_8);
    return new Result(process.waitFor(), out, lastError());
  }

  private String lastError() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      Path file = files.filter(f -> f.toString().endsWith(".err")).findFirst().orElseThrow();
      String text = Files.readString(file);
      Files.delete(file);
      return text;
    }
  }

  /**
   * Waits until no process that names this copy is left, a training in the background above all.
   */
  void awaitQuiet() {
    await(() -> ProcessHandle.allProcesses().noneMatch(this::names));
  }

  private boolean names(ProcessHandle process) {
    String line = process.info().commandLine().orElseGet(() -> process.info().command().orElse(""));
    return line.contains(folder.toString()) || line.contains(root.toString());
  }

  /** The archives that stand ready for use. */
  List<Path> archives() {
    return cached("deadband.jsa");
  }

  List<Path> locks() {
    return cached("lock");
  }

  /** The folder in which this copy keeps its archive for the Java that runs the tests. */
  Path place() {
    return Path.of(cache() + root.toString() + "/+" + System.getProperty("java.home"), "bin/java");
  }

  /**
   * A JVM made of a few lines of sh. It writes what it was called with to {@code calls} in its
   * folder, one argument a line, and then does as {@code body} says.
   *
   * @param version what its release file tells; no release file where blank
   */
  Path fakeJava(String name, String version, String body) {
    try {
      Path home = created(folder.resolve(name));
      Path java = created(home.resolve("bin")).resolve("java");
      Files.writeString(
          java,
          """
          #!/bin/sh
          calls='%s/calls'
          printf '%%s\\n' "$@" >>"$calls"
          archive=
          for word; do
            case $word in -XX:ArchiveClassesAtExit=*) archive=${word#*=} ;; esac
          done
          %s
          """
              .formatted(home, body));
      Files.setPosixFilePermissions(java, PosixFilePermissions.fromString("rwxr-xr-x"));
      if (!version.isBlank()) {
        Files.writeString(home.resolve("release"), "JAVA_VERSION=\"" + version + "\"\n");
      }
      return home;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<String> calls(Path fakeJava) {
    try {
      return Files.readAllLines(fakeJava.resolve("calls"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static void await(BooleanSupplier condition) {
    Instant end = Instant.now().plus(PATIENCE);
    while (!condition.getAsBoolean()) {
      if (Instant.now().isAfter(end)) {
        throw new AssertionError("waited " + PATIENCE + " in vain");
      }
      pause();
    }
  }

  private static void pause() {
    try {
      Thread.sleep(50);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private List<Path> cached(String name) {
    if (!Files.isDirectory(cache())) {
      return List.of();
    }
    try (Stream<Path> files = Files.walk(cache())) {
      return files.filter(file -> file.endsWith(name)).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path created(Path directory) {
    try {
      return Files.createDirectories(directory);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void copy(Path from, Path to) {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Path target = to.resolve(from.relativize(file));
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          Files.copy(file, target, COPY_ATTRIBUTES);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Leaves a share of a file. */
  static void cut(Path file, double share) throws IOException {
    makeWritable(file);
    try (var bytes = new RandomAccessFile(file.toFile(), "rw")) {
      bytes.setLength((long) (share * bytes.length()));
    }
  }

  static void makeWritable(Path file) throws IOException {
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
  }
}
