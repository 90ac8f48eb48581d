package deadband.reading;

import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.meterlog.MeterLog;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;

/**
 * A meter log, read or not: CSV as loggers and portals export it, Green Button (ESPI) XML, or the
 * telegrams of a DSMR P1 port. It is read as a stream: only numbers are kept.
 */
public sealed interface LogReading {

  /** The name under which the file is reported. */
  String name();

  /**
   * A log.
   *
   * @param skipped rows that hold no reading, in words; empty where there are none
   */
  record Read(String name, MeterLog log, List<String> skipped) implements LogReading {
    public Read {
      skipped = List.copyOf(skipped);
    }
  }

  /** A file that is no log that can be read. */
  record Unreadable(String name, List<Problem> problems) implements LogReading {
    public Unreadable {
      problems = List.copyOf(problems);
    }
  }

  static LogReading ofFile(Path path, LogOptions options) {
    Source source = Source.named(path.toString());
    try {
      BasicFileAttributes attributes = Files.readAttributes(path, BasicFileAttributes.class);
      if (attributes.isDirectory()) {
        return unreadable(Problem.of(source, Kind.A_FOLDER, "a folder", "a file"));
      }
      if (!attributes.isRegularFile()) {
        return unreadable(Problem.of(source, Kind.NOT_A_FILE, "a device or a pipe", "a file"));
      }
      try (InputStream in = Files.newInputStream(path)) {
        return ofStream(path.toString(), in, options);
      }
    } catch (IOException e) {
      return unreadable(Bytes.refusal(source, e));
    }
  }

  /** Reads what a stream gives; the stream is left open. */
  static LogReading ofStream(String name, InputStream in, LogOptions options) {
    BufferedInputStream bytes = new BufferedInputStream(in, 1 << 16);
    try {
      bytes.mark(1 << 12);
      byte[] head = bytes.readNBytes(1 << 11);
      bytes.reset();
      Charset charset = charset(head);
      String start = new String(head, charset).replace(Character.toString(Source.MARK), "").strip();
      if (start.isEmpty()) {
        return unreadable(
            Problem.of(
                Source.named(name), Kind.EMPTY, "no row", "a header and a row for each reading"));
      }
      if (start.startsWith("<")) {
        return new GreenButton(name, options).read(bytes);
      }
      if (Telegrams.begin(start)) {
        return new Telegrams(name, options).read(bytes);
      }
      return new LogCsv(name, options).read(bytes, charset);
    } catch (IOException e) {
      return unreadable(Bytes.refusal(Source.named(name), e));
    }
  }

  private static Charset charset(byte[] head) {
    if (head.length > 1 && head[0] == (byte) 0xFF && head[1] == (byte) 0xFE) {
      return StandardCharsets.UTF_16LE;
    }
    if (head.length > 1 && head[0] == (byte) 0xFE && head[1] == (byte) 0xFF) {
      return StandardCharsets.UTF_16BE;
    }
    return isUtf8(head) ? StandardCharsets.UTF_8 : Charset.forName("windows-1252");
  }

  /** Whether the beginning of a file can be UTF-8; its last character may be cut. */
  private static boolean isUtf8(byte[] head) {
    return !StandardCharsets.UTF_8
        .newDecoder()
        .decode(ByteBuffer.wrap(head), CharBuffer.allocate(head.length), false)
        .isError();
  }

  /** A file refused for one reason. */
  static Unreadable unreadable(Problem problem) {
    return new Unreadable(problem.source().name(), List.of(problem));
  }
}
