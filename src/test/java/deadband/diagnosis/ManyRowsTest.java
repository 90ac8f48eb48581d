package deadband.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.reading.LogOptions;
import deadband.reading.LogReading;
import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.AbstractCollection;
import java.util.Collections;
import java.util.Iterator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A long log is read, and its runs are found, in half of the heap that its rows may take at 512 MB
 * for a million, so that a regression shows before the bound is broken. The time is measured by
 * {@code src/bench/million-rows}.
 */
class ManyRowsTest {

  private static final int ROWS = 200_000;
  private static final int HEAP_MB = 512 * ROWS / 1_000_000 / 2;

  /** The rows as a file holds them, made as they are read. */
  private static InputStream rows() {
    return new SequenceInputStream(
        Collections.enumeration(
            new AbstractCollection<InputStream>() {
              @Override
              public Iterator<InputStream> iterator() {
                return IntStream.range(-1, ROWS).mapToObj(ManyRowsTest::row).iterator();
              }

              @Override
              public int size() {
                return ROWS + 1;
              }
            }));
  }

  private static InputStream row(int row) {
    int pump_W = row / 600 % 22 < 10 ? 2800 : 12;
    String line =
        row < 0
            ? "time,grid (W),pv (W),heat pump (W)\n"
            : String.format(
                Locale.ROOT, "%d,%d,3000,%d%n", 1_777_593_600 + row, pump_W - 2600, pump_W);
    return new ByteArrayInputStream(line.getBytes(StandardCharsets.UTF_8));
  }

  /** Reads them in a process of its own. */
  public static void main(String[] none) {
    LogReading.Read read =
        (LogReading.Read) LogReading.ofStream("rows.csv", rows(), LogOptions.none());
    Diagnosis diagnosis =
        Diagnosis.of(Optional.empty(), Optional.of(read.log()), ObservedWords.of(""));
    System.exit(read.log().rows() == ROWS && diagnosis.cycles().count() > 10 ? 0 : 1);
  }

  /** Where the classes of the project and its reader of CSV come from, however tests are run. */
  private static String classPath() throws ClassNotFoundException {
    return Stream.of(
            ManyRowsTest.class,
            Diagnosis.class,
            Class.forName("de.siegmar.fastcsv.reader.CsvReader"))
        .map(known -> Path.of(URI.create(location(known))).toString())
        .collect(Collectors.joining(File.pathSeparator));
  }

  private static String location(Class<?> known) {
    return known.getProtectionDomain().getCodeSource().getLocation().toString();
  }

  @Test
  void aLongLogNeedsLittleHeap() throws Exception {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + HEAP_MB + "m",
                "-XX:+UseSerialGC",
                "-cp",
                classPath(),
                ManyRowsTest.class.getName())
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
  }
}
