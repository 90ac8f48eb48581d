package deadband.cli;

import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.reading.SetupReading;
import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.zip.GZIPInputStream;

/**
 * The setups that a command line names, one after the other: files, those in folders, standard
 * input, and the lines of JSON Lines, packed by gzip or not.
 *
 * @param name of standard input in a report
 * @param lines whether standard input holds a setup a line
 * @param equipment where the files lie that they name
 */
record Inputs(
    List<String> words, String name, boolean lines, EquipmentOption equipment, Console console) {

  /**
   * A setup to be read.
   *
   * @param path where it can be read again; empty where it cannot
   * @param bytes held of it, 0 where it is yet to be read
   */
  record Input(String path, int bytes, Supplier<SetupReading> reading) {}

  /** Hands on each until no more are taken; lines are read only as they are taken. */
  boolean each(Predicate<Input> taken) {
    for (String word : words) {
      if (!each(word, taken)) {
        return false;
      }
    }
    return true;
  }

  /** Whether they may be more than one, however many there are. */
  boolean maybeSeveral() {
    return words.size() > 1
        || words.stream()
            .anyMatch(
                word ->
                    word.equals(SetupInput.STANDARD_INPUT)
                        ? lines
                        : Files.isDirectory(Path.of(word)) || holdsLines(Path.of(word)));
  }

  private boolean each(String word, Predicate<Input> taken) {
    if (word.equals(SetupInput.STANDARD_INPUT)) {
      return lines
          ? eachLine(name, console.in(), taken)
          : taken.test(new Input("", 0, () -> stream(SetupReading.ofStream(name, console.in()))));
    }
    Path path = Path.of(word);
    if (holdsLines(path)) {
      return eachLine(path, taken);
    }
    return Files.isDirectory(path) ? eachWithin(path, taken) : taken.test(file(path));
  }

  private Input file(Path path) {
    return new Input(
        path.toString(), 0, () -> equipment.withSheets(SetupReading.ofFile(path), path));
  }

  private SetupReading stream(SetupReading reading) {
    return equipment.withSheets(reading, null);
  }

  private boolean eachWithin(Path path, Predicate<Input> taken) {
    SetupFiles folder = SetupFiles.in(path, equipment::isFolder);
    folder.skipped().forEach(console::tell);
    return folder.setups().stream().map(this::file).allMatch(taken)
        && folder.closed().stream().map(Inputs::read).allMatch(taken);
  }

  private static Input read(SetupReading reading) {
    return new Input("", 0, () -> reading);
  }

  private static boolean holdsLines(Path path) {
    String file = path.toString().toLowerCase(Locale.ROOT);
    return (file.endsWith(".jsonl") || file.endsWith(".jsonl.gz")) && Files.isRegularFile(path);
  }

  private boolean eachLine(Path path, Predicate<Input> taken) {
    try (InputStream in = Files.newInputStream(path)) {
      return eachLine(path.toString(), in, taken);
    } catch (IOException e) {
      return taken.test(unreadable(path.toString(), e));
    }
  }

  /** Each line under its number, blank ones passed over; what cannot be read on ends them. */
  private boolean eachLine(String name, InputStream in, Predicate<Input> taken) {
    long number = 0;
    boolean any = false;
    try {
      Lines lines = new Lines(unpacked(in));
      for (byte[] line = lines.next(); line != null; line = lines.next()) {
        number++;
        if (isBlank(line)) {
          continue;
        }
        any = true;
        if (!taken.test(line(name(name, number), line))) {
          return false;
        }
      }
      // a stream without a setup is read as one, which says so
      return any || taken.test(line(name, new byte[0]));
    } catch (IOException e) {
      return taken.test(unreadable(name(name, number + 1), e));
    }
  }

  private static boolean isBlank(byte[] line) {
    for (byte each : line) {
      if (each < 0 || each > ' ') {
        return false;
      }
    }
    return true;
  }

  private Input line(String name, byte[] line) {
    return new Input(
        "", line.length, () -> stream(SetupReading.ofLine(name, new ByteArrayInputStream(line))));
  }

  private static String name(String file, long line) {
    return file + ":" + line;
  }

  private static InputStream unpacked(InputStream in) throws IOException {
    BufferedInputStream bytes = new Ahead(in);
    bytes.mark(2);
    boolean packed = bytes.read() == 0x1F && bytes.read() == 0x8B;
    bytes.reset();
    return packed ? new GZIPInputStream(bytes, Lines.BUFFER) : bytes;
  }

  private static Input unreadable(String name, IOException e) {
    String reason = e.getMessage() == null ? "a failure while reading" : e.getMessage();
    Problem problem =
        Problem.of(Source.named(name), Kind.NOT_READABLE, reason, "lines that can be read");
    return read(new SetupReading.Unreadable(name, List.of(problem)));
  }

  /**
   * Looks ahead where it is asked whether anything follows: the unpacker takes "nothing yet" from a
   * slow pipe for the end, and would drop what was packed after it.
   */
  private static final class Ahead extends BufferedInputStream {

    Ahead(InputStream in) {
      super(in, Lines.BUFFER);
    }

    @Override
    public synchronized int available() throws IOException {
      int known = super.available();
      if (known > 0) {
        return known;
      }
      mark(1);
      int next = read();
      reset();
      return next < 0 ? 0 : 1;
    }
  }
}
