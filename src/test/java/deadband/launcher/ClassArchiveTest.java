package deadband.launcher;

import static deadband.launcher.Unpacked.cut;
import static deadband.launcher.Unpacked.makeWritable;
import static java.nio.file.StandardCopyOption.COPY_ATTRIBUTES;
import static org.assertj.core.api.Assertions.assertThat;

import deadband.launcher.Unpacked.Result;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The class archive that the sh launcher makes behind a run and uses in the next: made once, used
 * where it is whole, and its loss never seen by the user. Each test has a home of its own; the
 * training of a real archive, which costs seconds, is done once for all.
 */
@DisabledOnOs(OS.WINDOWS)
class ClassArchiveTest {
  private static final String ARCHIVE = "[ -z \"$archive\" ] || echo whole >\"$archive\"";

  @TempDir static Path shared;

  /** Where no blank is in the path: JDK 17 archives no class of a jar whose path holds one. */
  private static Unpacked trained;

  private static Result untrained;
  private static Result training;

  @TempDir Path folder;
  private Unpacked deadband;

  @BeforeAll
  static void install() {
    trained = Unpacked.into(shared, "plain");
    untrained = trained.check(trained.withoutArchive());
    training = trained.check(trained.surroundings());
    trained.awaitQuiet();
  }

  @BeforeEach
  void useWhatIsInstalled() {
    deadband = trained.seenFrom(folder);
  }

  @AfterEach
  void leaveNothingRunning() {
    deadband.awaitQuiet();
  }

  @Test
  void makesAnArchiveAfterTheRunAndUsesItInTheNext() throws IOException {
    assertThat(training).isEqualTo(untrained);
    assertThat(trained.archives()).hasSize(1);
    assertThat(trained.locks()).isEmpty();
    deadband = trained;
    assertThat(deadband.check(deadband.surroundings())).isEqualTo(untrained);
    assertThat(classesTakenFromArchive())
        .contains("deadband.cli.Main", "picocli.CommandLine")
        .anyMatch(name -> name.startsWith("org.drools."));
  }

  @Test
  void dropsATruncatedArchiveUnseenAndMakesAnother() throws IOException {
    Path java = archivingJava();
    Map<String, String> env = deadband.with("JAVA_HOME", java.toString());
    deadband.run(env, "checks");
    deadband.awaitQuiet();
    Path archive = onlyArchive();
    truncate(archive);
    Files.delete(java.resolve("calls"));

    deadband.run(env, "checks");
    deadband.awaitQuiet();
    assertThat(Unpacked.calls(java)).doesNotContain("-XX:SharedArchiveFile=" + archive);
    assertThat(trainings(java)).isEqualTo(1);
    assertThat(onlyArchive()).hasContent("whole");

    deadband.run(env, "checks");
    assertThat(Unpacked.calls(java)).contains("-XX:SharedArchiveFile=" + onlyArchive());
  }

  @Test
  void isWellAgainAtTheLatestOneRunAfterAnArchiveRotted() throws IOException {
    deadband = trained.seenFrom(folder);
    Path place = Files.createDirectories(deadband.place());
    for (String file : List.of("deadband.jsa", "list")) {
      Files.copy(trained.place().resolve(file), place.resolve(file), COPY_ATTRIBUTES);
    }
    rot(place.resolve("deadband.jsa"));
    // as if another run were making the next one, so that none is made here
    Files.createDirectory(place.resolve("lock"));

    deadband.check(deadband.surroundings());
    assertThat(deadband.check(deadband.surroundings())).isEqualTo(untrained);
  }

  @Test
  void survivesAFullDisk() {
    // A limit on the size of files stands in for the disk: the archive cannot be written whole.
    List<String> limited =
        new ArrayList<>(List.of("sh", "-c", "ulimit -f 2000; exec \"$@\"", "sh"));
    limited.addAll(List.of(deadband.launcher().toString(), "check", deadband.sample()));

    assertThat(deadband.execute(deadband.surroundings(), limited)).isEqualTo(untrained);
    deadband.awaitQuiet();
    assertThat(deadband.archives()).isEmpty();
    assertThat(deadband.locks())
        .singleElement()
        .satisfies(lock -> assertThat(lock).isEmptyDirectory());
  }

  @Test
  void survivesAHomeThatCannotBeWritten() throws IOException {
    String java = deadband.fakeJava("jvm", "17", "echo out; exit 1").toString();
    Path locked = Files.createDirectory(folder.resolve("locked"));
    Files.setPosixFilePermissions(locked, PosixFilePermissions.fromString("r-xr-xr-x"));
    // The super-user writes there all the same; below a plain file nobody can.
    Path file = Files.createFile(folder.resolve("no folder"));

    for (Path home : List.of(locked, file)) {
      Map<String, String> env = deadband.with("HOME", home.toString());
      env.put("JAVA_HOME", java);
      assertThat(deadband.check(env)).isEqualTo(new Result(1, "out\n", ""));
      deadband.awaitQuiet();
    }
  }

  @Test
  void trainsOnlyWhenTheUserIsServed() {
    String marker = folder.resolve("trained").toString();
    Path java =
        deadband.fakeJava(
            "jvm",
            "17",
            """
            if [ -n "$archive" ]; then sleep 2; echo whole >"$archive"; : >'%s'; fi
            echo out; echo err >&2; exit 1
            """
                .formatted(marker));

    Result result = deadband.run(deadband.with("JAVA_HOME", java.toString()), "check", "x.json");

    assertThat(result).isEqualTo(new Result(1, "out\n", "err\n"));
    assertThat(Path.of(marker)).doesNotExist();
    assertThat(Unpacked.calls(java)).startsWith("-XX:TieredStopAtLevel=1").endsWith("x.json");
    deadband.awaitQuiet();
    assertThat(Path.of(marker)).exists();
    // The stand-in never exits well, so the archive was not taken.
    assertThat(deadband.archives()).isEmpty();
  }

  @Test
  void doesNotTryAFailedTrainingAgainWithinTheHour() throws IOException {
    Path java = deadband.fakeJava("jvm", "17", "[ -z \"$archive\" ] || exit 1");
    Map<String, String> env = deadband.with("JAVA_HOME", java.toString());

    for (int i = 0; i < 2; i++) {
      deadband.run(env, "checks");
      deadband.awaitQuiet();
    }
    assertThat(trainings(java)).isEqualTo(1);

    FileTime longAgo = FileTime.from(Instant.now().minusSeconds(7200));
    Files.setLastModifiedTime(deadband.locks().get(0), longAgo);
    deadband.run(env, "checks");
    deadband.awaitQuiet();
    assertThat(trainings(java)).isEqualTo(2);
  }

  @Test
  void takesNoArchiveThatWasNotSeenToWork() {
    Path java =
        deadband.fakeJava(
            "jvm",
            "17",
            """
            [ -z "$archive" ] || echo half >"$archive"
            case "$*" in *-Xshare:on*) exit 1 ;; esac
            """);

    deadband.run(deadband.with("JAVA_HOME", java.toString()), "checks");
    deadband.awaitQuiet();

    assertThat(trainings(java)).isEqualTo(1);
    assertThat(deadband.archives()).isEmpty();
  }

  @Test
  void keepsItsArchiveWhereTheUserKeepsCaches() {
    Path caches = folder.resolve("elsewhere");
    Map<String, String> env = deadband.with("JAVA_HOME", archivingJava().toString());
    env.put("XDG_CACHE_HOME", caches.toString());

    deadband.run(env, "checks");
    deadband.awaitQuiet();

    assertThat(caches.resolve("deadband")).isDirectoryRecursivelyContaining("glob:**.jsa");
    assertThat(deadband.cache()).doesNotExist();
  }

  @Test
  void makesOneArchiveForSeveralAtOnce() throws Exception {
    Path java = archivingJava();
    Map<String, String> env = deadband.with("JAVA_HOME", java.toString());
    List<Process> runs = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      runs.add(deadband.start(env, List.of(deadband.launcher().toString(), "checks")));
    }
    for (Process run : runs) {
      assertThat(run.waitFor()).isZero();
    }
    deadband.awaitQuiet();

    assertThat(trainings(java)).isEqualTo(1);
    assertThat(deadband.archives()).hasSize(1);
    assertThat(deadband.locks()).isEmpty();
  }

  @Test
  void replacesTheArchiveWhenAJarChanges() throws IOException {
    deadband = Unpacked.into(folder, "another");
    Path java = archivingJava();
    Map<String, String> env = deadband.with("JAVA_HOME", java.toString());
    deadband.run(env, "checks");
    deadband.awaitQuiet();
    Path jar = deadband.libFolder().resolve("deadband.jar");
    Files.setLastModifiedTime(jar, FileTime.from(Instant.now().minusSeconds(86_400)));

    deadband.run(env, "checks");
    deadband.awaitQuiet();

    assertThat(trainings(java)).isEqualTo(2);
    assertThat(deadband.archives()).hasSize(1);
  }

  @Test
  void keepsArchivesOfDifferentJavasApart() {
    for (String version : List.of("17.0.15", "25.0.1")) {
      Path java = deadband.fakeJava("java " + version, version, ARCHIVE);
      deadband.run(deadband.with("JAVA_HOME", java.toString()), "checks");
      deadband.awaitQuiet();
    }

    assertThat(deadband.archives()).hasSize(2);
  }

  @Test
  void makesNoArchiveWhereNoneIsWanted() {
    assertThat(deadband.run(deadband.offWith(archivingJava()), "checks").exit()).isZero();
    deadband.awaitQuiet();

    assertThat(deadband.cache()).doesNotExist();
  }

  private Path onlyArchive() {
    assertThat(deadband.archives()).hasSize(1);
    return deadband.archives().get(0);
  }

  private Path archivingJava() {
    return deadband.fakeJava("jvm", "17", ARCHIVE);
  }

  private static int trainings(Path java) {
    return Collections.frequency(
        Unpacked.calls(java).stream().map(w -> w.startsWith("-XX:ArchiveClassesAtExit")).toList(),
        true);
  }

  private List<String> classesTakenFromArchive() throws IOException {
    Path log = deadband.workplace().resolve("classes.log");
    deadband.check(deadband.with("DEADBAND_JAVA_OPTS", "-Xlog:class+load:file=classes.log:none"));
    try (var lines = Files.lines(log)) {
      return lines
          .filter(line -> line.contains("shared objects file (top)"))
          .map(line -> line.substring(0, line.indexOf(' ')))
          .toList();
    }
  }

  private static void truncate(Path archive) throws IOException {
    cut(archive, 0.5);
  }

  /** Blanks the inner half; size, time and header stay as they were. */
  private static void rot(Path archive) throws IOException {
    FileTime time = Files.getLastModifiedTime(archive);
    makeWritable(archive);
    try (var file = new RandomAccessFile(archive.toFile(), "rw")) {
      file.seek(file.length() / 4);
      file.write(new byte[(int) (file.length() / 2)]);
    }
    Files.setLastModifiedTime(archive, time);
  }
}
