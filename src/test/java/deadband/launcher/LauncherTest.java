package deadband.launcher;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static java.nio.file.StandardCopyOption.COPY_ATTRIBUTES;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

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
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the sh launcher must survive. Runs after packaging, on a copy of the built folder whose path
 * has blanks, an apostrophe and a letter beyond ASCII in it; each test has a home of its own. What
 * costs seconds, a whole check and the training of an archive, is done once for all.
 */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {
  private static final String NOTHING = "exit 0";
  private static final String ARCHIVE = "[ -z \"$archive\" ] || echo whole >\"$archive\"";

  @TempDir static Path shared;

  private static Unpacked installed;
  private static Result plain;

  /** Where no blank is in the path: JDK 17 archives no class of a jar whose path holds one. */
  private static Unpacked trained;

  private static Result untrained;
  private static Result training;

  @TempDir Path folder;
  private Unpacked deadband;

  @BeforeAll
  static void install() {
    installed = Unpacked.into(shared, "Mill's van, März");
    plain = check(installed, withoutArchive(installed));
    trained = Unpacked.into(shared, "plain");
    untrained = check(trained, withoutArchive(trained));
    training = check(trained, trained.surroundings());
    trained.awaitQuiet();
  }

  @BeforeEach
  void useWhatIsInstalled() {
    deadband = installed.seenFrom(folder);
  }

  /** For a test that damages it. */
  private void installAnother(String name) {
    deadband = Unpacked.into(folder, name);
  }

  @AfterEach
  void leaveNothingRunning() {
    deadband.awaitQuiet();
  }

  /** On a terminal the report is as wide as the terminal, and no line is wider. */
  @ParameterizedTest
  @ValueSource(ints = {60, 80, 120})
  void fillsTheTerminal(int columns) {
    Map<String, String> environment = withoutArchive();
    assumeThat(deadband.execute(environment, List.of("sh", "-c", "script --version")).out())
        .as("script of util-linux, which gives a command a terminal")
        .contains("util-linux");
    String command =
        "stty cols %d; cd %s; exec ../bin/deadband check training.json 2>/dev/null"
            .formatted(columns, quoted(deadband.libFolder()));

    String out =
        deadband.execute(environment, List.of("script", "-qec", command, "/dev/null")).out();

    assertThat(out.lines().map(line -> line.replaceAll("\u001b\\[\\d*m|\r", "")))
        .allMatch(line -> line.codePointCount(0, line.length()) <= columns)
        .anyMatch(line -> line.codePointCount(0, line.length()) == columns);
  }

  private static String quoted(Object word) {
    return "'" + word.toString().replace("'", "'\\''") + "'";
  }

  // With the Java that runs the tests -----------------------------------------------------------

  @Test
  void tellsTheVersionOfTheBuild() {
    Result result = deadband.run(withoutArchive(), "--version");

    assertThat(result.exit()).isZero();
    assertThat(result.out()).contains(System.getProperty("deadband.version"));
    assertThat(result.err()).isEmpty();
  }

  @Test
  void compilesHouseRulesWhereTheyAreAskedFor() throws IOException {
    Path rules = Files.createDirectories(folder.resolve("our rules"));
    Files.writeString(
        rules.resolve("house.drl"),
        """
        package house;
        import deadband.topics.thresholds.RelayGap;
        import function deadband.judging.Found.found;
        rule "any-gap"
            @consequence("query")
            @title("There is a gap")
            @why("Tried by a test.")
        when
            $gap : RelayGap( width_kW.isBelow( 99 ) )
        then
            found( kcontext, $gap );
        end
        """);
    String[] words = {
      "check", "--fail-on", "never", "--rules", rules.toString(), deadband.sample()
    };
    Result result = deadband.run(withoutArchive(), words);

    assertThat(result.exit()).isZero();
    assertThat(result.out()).contains("any-gap (house rule)");
    assertThat(result.err()).contains("house rules are code");

    installAnother("without the compiler");
    deleteAll(deadband.libFolder().resolve("house"));
    Result without = deadband.run(withoutArchive(), words);
    assertThat(without.exit()).isEqualTo(70);
    assertThat(without.err()).contains("lib/house").doesNotContain("\tat ");
  }

  private static void deleteAll(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }

  @Test
  void makesAnArchiveAfterTheRunAndUsesItInTheNext() throws IOException {
    assertThat(training).isEqualTo(untrained);
    assertThat(trained.archives()).hasSize(1);
    assertThat(trained.locks()).isEmpty();
    deadband = trained;
    assertThat(check(deadband.surroundings())).isEqualTo(untrained);
    assertThat(classesTakenFromArchive())
        .contains("deadband.cli.Main", "picocli.CommandLine")
        .anyMatch(name -> name.startsWith("org.drools."));
  }

  @Test
  void dropsATruncatedArchiveUnseenAndMakesAnother() throws IOException {
    Path java = archivingJava();
    Map<String, String> env = with("JAVA_HOME", java.toString());
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

    check(deadband.surroundings());
    assertThat(check(deadband.surroundings())).isEqualTo(untrained);
  }

  @Test
  void survivesAFullDisk() {
    // A limit on the size of files stands in for the disk: the archive cannot be written whole.
    List<String> limited =
        new ArrayList<>(List.of("sh", "-c", "ulimit -f 2000; exec \"$@\"", "sh"));
    limited.addAll(List.of(deadband.launcher().toString(), "check", deadband.sample()));

    assertThat(deadband.execute(deadband.surroundings(), limited)).isEqualTo(plain);
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
      Map<String, String> env = with("HOME", home.toString());
      env.put("JAVA_HOME", java);
      assertThat(check(env)).isEqualTo(new Result(1, "out\n", ""));
      deadband.awaitQuiet();
    }
  }

  @Test
  void runsWithoutAHome() {
    Map<String, String> env = deadband.surroundings();
    env.remove("HOME");

    assertThat(check(env)).isEqualTo(plain);
  }

  @Test
  void readsFileNamesBeyondAsciiWithoutALocale() throws IOException {
    Path file = deadband.workplace().resolve("Mühle 水.json");
    Files.copy(Path.of(deadband.sample()), file);

    Result result = deadband.run(withoutArchive(), "check", file.getFileName().toString());

    assertThat(result.out()).contains("Mühle 水.json");
    assertThat(result.exit()).isEqualTo(plain.exit());
  }

  @Test
  void isFoundThroughSymbolicLinks() throws IOException {
    Result version = deadband.run(withoutArchive(), "--version");
    Path bin = Files.createDirectories(folder.resolve("my bin"));
    Path direct = Files.createSymbolicLink(bin.resolve("direct"), deadband.launcher());
    Path relative = Files.createSymbolicLink(bin.resolve("db"), Path.of("direct"));
    Map<String, String> env = withoutArchive();
    env.merge("PATH", bin.toString(), (path, more) -> more + ":" + path);

    assertThat(version.exit()).isZero();
    for (String name : List.of(direct.toString(), relative.toString(), "../my bin/db", "db")) {
      List<String> shell = List.of("sh", "-c", "exec \"$@\"", "sh", name, "--version");
      assertThat(deadband.execute(env, shell)).isEqualTo(version);
    }
  }

  // With a stand-in for Java --------------------------------------------------------------------

  @Test
  void saysWhatToInstallWhereThereIsNoJava() {
    Result result = deadband.run(Map.of("PATH", "/nowhere"), "check", "x.json");

    assertThat(result.exit()).isEqualTo(70);
    assertThat(result.out()).isEmpty();
    assertThat(result.err())
        .startsWith("deadband: no Java found. Install Java 17 or newer")
        .hasLineCount(1);
  }

  @Test
  void saysThatJavaHomeIsWrong() {
    Result result = deadband.run(with("JAVA_HOME", "/no where"), "check", "x.json");

    assertThat(result.exit()).isEqualTo(70);
    assertThat(result.err()).contains("JAVA_HOME is /no where").hasLineCount(1);
  }

  @Test
  void refusesAnOldJava() {
    assertThat(refusal(deadband.fakeJava("java 8", "1.8.0_392", NOTHING)))
        .contains("Java 1.8.0_392");
    assertThat(refusal(deadband.fakeJava("java 16", "16.0.2", NOTHING))).contains("Java 16.0.2");
    Path mute =
        deadband.fakeJava("java 11", "", "echo 'openjdk version \"11.0.2\" 2019-01-15' >&2");
    assertThat(refusal(mute)).contains("Java 11.0.2");
  }

  @Test
  void takesANewerJava() {
    for (String version : List.of("17", "17.0.15", "25.0.1")) {
      Path java = deadband.fakeJava("java " + version, version, NOTHING);
      assertThat(deadband.run(offWith(java), "checks").exit()).isZero();
    }
    Path mute = deadband.fakeJava("java 21", "", "echo 'openjdk version \"21\" 2023-09-19' >&2");
    assertThat(deadband.run(offWith(mute), "checks").exit()).isZero();
  }

  @Test
  void takesTheFirstJavaOnThePath() throws IOException {
    Path java = deadband.fakeJava("jvm", "17", NOTHING);
    Path bin = Files.createDirectories(folder.resolve("bin"));
    Files.createSymbolicLink(bin.resolve("java"), java.resolve("bin/java"));
    Map<String, String> env = withoutArchive();
    env.remove("JAVA_HOME");
    env.merge("PATH", bin.toString(), (path, more) -> more + ":" + path);

    assertThat(deadband.run(env, "checks").exit()).isZero();
    assertThat(Unpacked.calls(java)).contains("checks");
  }

  @Test
  void handsOnEveryArgumentAndTheExitCodeAsTheyAre() {
    Path java = deadband.fakeJava("jvm", "17", "exit 3");
    String[] words = {"check", "a  b", "", "*", "$HOME", "\\n", "it's", "\"q\"", "--", "-x"};

    Result result = deadband.run(offWith(java), words);

    assertThat(result).isEqualTo(new Result(3, "", ""));
    assertThat(Unpacked.calls(java)).endsWith(words);
  }

  @Test
  void handsOnStandardInput() throws Exception {
    Path java = deadband.fakeJava("jvm", "17", "cat");
    Process run =
        deadband.start(offWith(java), List.of(deadband.launcher().toString(), "check", "-"));
    run.outputWriter().append("{ }").close();

    assertThat(run.getInputStream()).hasContent("{ }");
    assertThat(run.waitFor()).isZero();
  }

  @Test
  void handsOnJvmOptions() {
    Path java = deadband.fakeJava("jvm", "17", NOTHING);
    Map<String, String> env = offWith(java);
    env.put("DEADBAND_JAVA_OPTS", "-Xmx64m  -Dglob=*");

    deadband.run(env, "checks");

    assertThat(Unpacked.calls(java)).containsSubsequence("-Xmx64m", "-Dglob=*", "-cp");
    assertThat(Unpacked.calls(java)).contains("-XX:+UseSerialGC");
  }

  @Test
  void leavesTheChoiceOfCollectorToTheUser() {
    Path java = deadband.fakeJava("jvm", "17", NOTHING);
    Map<String, String> env = offWith(java);
    env.put("DEADBAND_JAVA_OPTS", "-XX:+UseG1GC");

    deadband.run(env, "checks");

    assertThat(Unpacked.calls(java)).contains("-XX:+UseG1GC").doesNotContain("-XX:+UseSerialGC");
  }

  @Test
  void letsLongCommandsCompileInFull() {
    List<List<String>> commands =
        List.of(
            List.of("simulate", "x.json"),
            List.of("propose", "x.json"),
            List.of("check", "--format", "jsonl", "x"),
            List.of("check", "--format=jsonl", "x"));
    for (List<String> words : commands) {
      Path java = deadband.fakeJava("jvm for " + String.join(" ", words), "17", NOTHING);
      deadband.run(offWith(java), words.toArray(String[]::new));
      assertThat(Unpacked.calls(java))
          .contains("-XX:+UseParallelGC")
          .doesNotContain("-XX:TieredStopAtLevel=1");
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

    Result result = deadband.run(with("JAVA_HOME", java.toString()), "check", "x.json");

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
    Map<String, String> env = with("JAVA_HOME", java.toString());

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

    deadband.run(with("JAVA_HOME", java.toString()), "checks");
    deadband.awaitQuiet();

    assertThat(trainings(java)).isEqualTo(1);
    assertThat(deadband.archives()).isEmpty();
  }

  @Test
  void keepsItsArchiveWhereTheUserKeepsCaches() {
    Path caches = folder.resolve("elsewhere");
    Map<String, String> env = with("JAVA_HOME", archivingJava().toString());
    env.put("XDG_CACHE_HOME", caches.toString());

    deadband.run(env, "checks");
    deadband.awaitQuiet();

    assertThat(caches.resolve("deadband")).isDirectoryRecursivelyContaining("glob:**.jsa");
    assertThat(deadband.cache()).doesNotExist();
  }

  @Test
  void makesOneArchiveForSeveralAtOnce() throws Exception {
    Path java = archivingJava();
    Map<String, String> env = with("JAVA_HOME", java.toString());
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
    installAnother("another");
    Path java = archivingJava();
    Map<String, String> env = with("JAVA_HOME", java.toString());
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
      deadband.run(with("JAVA_HOME", java.toString()), "checks");
      deadband.awaitQuiet();
    }

    assertThat(deadband.archives()).hasSize(2);
  }

  @Test
  void makesNoArchiveWhereNoneIsWanted() {
    assertThat(deadband.run(offWith(archivingJava()), "checks").exit()).isZero();
    deadband.awaitQuiet();

    assertThat(deadband.cache()).doesNotExist();
  }

  @Test
  void saysThatItsOtherHalfIsMissing() throws IOException {
    installAnother("another");
    Files.delete(deadband.libFolder().resolve("deadband.jar"));

    Result result = deadband.run("checks");

    assertThat(result.exit()).isEqualTo(70);
    assertThat(result.err()).contains("lib/deadband.jar is missing").hasLineCount(1);
  }

  @Test
  void saysThatItsOtherHalfWasCutShort() throws IOException {
    installAnother("another");
    for (double share : new double[] {0.99, 0.5, 0}) {
      cut(deadband.libFolder().resolve("deadband.jar"), share);
      Result result = deadband.run(withoutArchive(), "checks");

      assertThat(result.exit()).isEqualTo(70);
      assertThat(result.out()).isEmpty();
      assertThat(result.err()).contains("lib/deadband.jar is damaged").hasLineCount(1);
    }
  }

  /** Every other jar that a check with a report in JSON needs: missing, or cut short. */
  @Test
  void saysInASentenceThatAnotherJarIsMissingOrCutShort() throws IOException {
    for (String library : List.of("picocli", "jackson-core", "drools-base")) {
      for (boolean gone : new boolean[] {false, true}) {
        installAnother(library + gone);
        Path jar;
        try (var jars = Files.list(deadband.libFolder())) {
          jar =
              jars.filter(at -> at.getFileName().toString().startsWith(library))
                  .findFirst()
                  .orElseThrow();
        }
        if (gone) {
          Files.delete(jar);
        } else {
          cut(jar, 0.5);
        }
        Result result =
            deadband.run(withoutArchive(), "check", "--format", "json", deadband.sample());

        assertThat(result.exit()).as(library).isEqualTo(70);
        assertThat(result.err())
            .as(library)
            .contains("unpack the whole folder again")
            .hasLineCount(1);
      }
    }
  }

  @Test
  void aFullStandardOutputIsNoSuccess() {
    for (String to : List.of(">/dev/full", ">&-")) {
      List<String> words =
          new ArrayList<>(
              List.of("sh", "-c", "\"$@\" " + to, "sh", deadband.launcher().toString()));
      words.add("checks");
      Result result = deadband.execute(withoutArchive(), words);

      assertThat(result.exit()).as(to).isEqualTo(5);
      assertThat(result.err()).as(to).contains("standard output could not be written");
    }
  }

  @Test
  void isReadableByTheOldShellOfWindows() throws IOException {
    String batch = Files.readString(Unpacked.BUILT.resolve("bin/deadband.cmd"), US_ASCII);

    assertThat(batch.split("\r\n", -1)).hasSizeGreaterThan(10);
    assertThat(batch.replace("\r\n", "")).doesNotContain("\r", "\n");
  }

  // ----------------------------------------------------------------------------------------------

  private Result check(Map<String, String> env) {
    return check(deadband, env);
  }

  private static Result check(Unpacked deadband, Map<String, String> env) {
    return deadband.run(env, "check", deadband.sample());
  }

  private Path onlyArchive() {
    assertThat(deadband.archives()).hasSize(1);
    return deadband.archives().get(0);
  }

  private Path archivingJava() {
    return deadband.fakeJava("jvm", "17", ARCHIVE);
  }

  private Map<String, String> with(String name, String value) {
    Map<String, String> env = deadband.surroundings();
    env.put(name, value);
    return env;
  }

  private Map<String, String> withoutArchive() {
    return withoutArchive(deadband);
  }

  private static Map<String, String> withoutArchive(Unpacked deadband) {
    Map<String, String> env = deadband.surroundings();
    env.put("DEADBAND_ARCHIVE", "off");
    return env;
  }

  private Map<String, String> offWith(Path java) {
    Map<String, String> env = withoutArchive();
    env.put("JAVA_HOME", java.toString());
    return env;
  }

  private String refusal(Path java) {
    Result result = deadband.run(offWith(java), "checks");
    assertThat(result.exit()).isEqualTo(70);
    assertThat(result.out()).isEmpty();
    assertThat(result.err()).contains("too old", "Install Java 17 or newer").hasLineCount(1);
    return result.err();
  }

  private static int trainings(Path java) {
    return Collections.frequency(
        Unpacked.calls(java).stream().map(w -> w.startsWith("-XX:ArchiveClassesAtExit")).toList(),
        true);
  }

  private List<String> classesTakenFromArchive() throws IOException {
    Path log = deadband.workplace().resolve("classes.log");
    check(with("DEADBAND_JAVA_OPTS", "-Xlog:class+load:file=classes.log:none"));
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

  private static void cut(Path archive, double share) throws IOException {
    makeWritable(archive);
    try (var file = new RandomAccessFile(archive.toFile(), "rw")) {
      file.setLength((long) (share * file.length()));
    }
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

  private static void makeWritable(Path archive) throws IOException {
    Files.setPosixFilePermissions(archive, PosixFilePermissions.fromString("rw-------"));
  }
}
