package deadband.reading;

import static java.nio.charset.StandardCharsets.UTF_8;

import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.document.Span;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** From a file, a stream or bytes to a text, or to what keeps it from being one. */
final class Bytes {

  private static final String SAVE_AGAIN =
      "UTF-8: save the file again and choose UTF-8 as its encoding";

  private Bytes() {}

  static JsonReading ofFile(Source source, Path path) {
    try {
      Problem refusal = refusal(source, Files.readAttributes(path, BasicFileAttributes.class));
      if (refusal != null) {
        return unreadable(refusal);
      }
      try (InputStream in = Files.newInputStream(path)) {
        return ofStream(source, in);
      }
    } catch (IOException e) {
      return unreadable(refusal(source, e));
    }
  }

  static JsonReading ofStream(Source source, InputStream in) {
    try {
      // one byte more than allowed tells too much from just enough
      byte[] bytes = in.readNBytes(JsonReading.MOST_BYTES + 1);
      return of(source, bytes);
    } catch (IOException e) {
      return unreadable(refusal(source, e));
    }
  }

  static JsonReading of(Source source, byte[] bytes) {
    if (bytes.length > JsonReading.MOST_BYTES) {
      return unreadable(Problem.of(source, Kind.TOO_LARGE, "more than 4 MiB", "at most 4 MiB"));
    }
    String other = otherEncoding(bytes);
    if (other != null) {
      return unreadable(Problem.of(source, Kind.OTHER_ENCODING, other, SAVE_AGAIN));
    }
    return decoded(source.name(), bytes);
  }

  /** Why a thing of that sort is not read; null for a plain file. */
  private static @Nullable Problem refusal(Source source, BasicFileAttributes attributes) {
    if (attributes.isDirectory()) {
      return Problem.of(source, Kind.A_FOLDER, "a folder", "a file");
    }
    // a pipe may never end and never begin; standard input is read by its own way
    return attributes.isRegularFile()
        ? null
        : Problem.of(
            source, Kind.NOT_A_FILE, "a device or a pipe", "a file, or - for standard input");
  }

  static Problem refusal(Source source, IOException e) {
    if (e instanceof NoSuchFileException) {
      return Problem.of(source, Kind.NO_SUCH_FILE, "nothing of that name", "the path of a file");
    }
    if (e instanceof AccessDeniedException) {
      return Problem.of(
          source, Kind.NO_PERMISSION, "no permission to read it", "a file that you may read");
    }
    return Problem.of(source, Kind.NOT_READABLE, reason(e), "a file that can be read");
  }

  private static String reason(IOException e) {
    String told = e instanceof FileSystemException system ? system.getReason() : e.getMessage();
    return told == null ? "a failure while reading" : told;
  }

  /** The encoding a text is in that is surely not in UTF-8, by its mark or its zero bytes. */
  private static @Nullable String otherEncoding(byte[] bytes) {
    int first = at(bytes, 0) << 8 | at(bytes, 1);
    int second = at(bytes, 2) << 8 | at(bytes, 3);
    boolean long32 = bytes.length >= 4;
    if (bytes.length < 2) {
      return null;
    }
    if (long32 && (first == 0xFFFE || isLow(first)) && second == 0) {
      return "UTF-32, low byte first";
    }
    if (long32 && first == 0 && (second == 0xFEFF || isHigh(second))) {
      return "UTF-32, high byte first";
    }
    if (first == 0xFFFE || isLow(first)) {
      return "UTF-16, low byte first";
    }
    return first == 0xFEFF || isHigh(first) ? "UTF-16, high byte first" : null;
  }

  /** An ASCII character followed by a zero byte: JSON begins with an ASCII character. */
  private static boolean isLow(int pair) {
    return (pair & 0xFF) == 0 && pair != 0;
  }

  private static boolean isHigh(int pair) {
    return pair >>> 8 == 0 && pair != 0;
  }

  private static int at(byte[] bytes, int index) {
    return index < bytes.length ? bytes[index] & 0xFF : 0;
  }

  private static JsonReading decoded(String name, byte[] bytes) {
    // a decoder that is not told otherwise reports what is malformed
    CharsetDecoder decoder = UTF_8.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    if (decoder.decode(in, out, true).isError()) {
      return unreadable(notUtf8(name, bytes, in.position()));
    }
    return SectionReader.read(Source.of(name, out.flip().toString()));
  }

  private static Problem notUtf8(String name, byte[] bytes, int bad) {
    int start = new String(bytes, 0, bad, UTF_8).length();
    // what cannot be read is shown by the sign Unicode has for it
    Source source = Source.of(name, new String(bytes, UTF_8));
    String hex = Integer.toHexString(bytes[bad] & 0xFF).toUpperCase(Locale.ROOT);
    return Problem.of(source, Kind.NOT_UTF8, "byte " + hex + " (hexadecimal)", SAVE_AGAIN)
        .at(new Span(start, start + 1));
  }

  private static JsonReading unreadable(Problem problem) {
    return new JsonReading.Unreadable(problem.source().name(), List.of(problem));
  }
}
