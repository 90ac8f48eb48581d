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
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** From a file, a stream or bytes to a text, or to what keeps it from being one. */
final class Bytes {

  private static final String SAVE_AGAIN =
      "UTF-8: save the file again and choose UTF-8 as its encoding";

  private static final int MEBI = 1024 * 1024;

  private final Source source;
  private final int mostBytes;

  private Bytes(Source source, int mostBytes) {
    this.source = source;
    this.mostBytes = mostBytes;
  }

  /**
   * The way to a text of that name.
   *
   * @param mostBytes the most that may be in it, whole mebibytes
   */
  static Bytes of(String name, int mostBytes) {
    return new Bytes(Source.named(name), mostBytes);
  }

  /** What became of the bytes. */
  sealed interface Content {
    /** A text that can be shown and taken apart. */
    record Text(Source source) implements Content {}

    /** Why there is none. */
    record Refused(Problem problem) implements Content {}
  }

  Content ofFile(Path path) {
    try {
      Problem refusal = refusal(Files.readAttributes(path, BasicFileAttributes.class));
      if (refusal != null) {
        return new Content.Refused(refusal);
      }
      try (InputStream in = Files.newInputStream(path)) {
        return ofStream(in);
      }
    } catch (IOException e) {
      return new Content.Refused(refusal(source, e));
    }
  }

  Content ofStream(InputStream in) {
    try {
      // one byte more than allowed tells too much from just enough
      return ofBytes(in.readNBytes(mostBytes + 1));
    } catch (IOException e) {
      return new Content.Refused(refusal(source, e));
    }
  }

  Content ofBytes(byte[] bytes) {
    if (bytes.length > mostBytes) {
      String most = mostBytes / MEBI + " MiB";
      return refused(Kind.TOO_LARGE, "more than " + most, "at most " + most);
    }
    String other = otherEncoding(bytes);
    return other == null ? decoded(bytes) : refused(Kind.OTHER_ENCODING, other, SAVE_AGAIN);
  }

  private Content refused(Kind kind, String found, String right) {
    return new Content.Refused(Problem.of(source, kind, found, right));
  }

  /** Why a thing of that sort is not read; null for a plain file. */
  private @Nullable Problem refusal(BasicFileAttributes attributes) {
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
      return Problem.of(source, Kind.NO_SUCH_FILE, "no file of that name", "the path of a file");
    }
    if (e instanceof AccessDeniedException) {
      return Problem.of(
          source, Kind.NO_PERMISSION, "no permission to read it", "a file that you may read");
    }
    return Problem.of(source, Kind.NOT_READABLE, reason(e), "a file that can be read");
  }

  private static String reason(IOException e) {
    String entered = e instanceof FileSystemException system ? system.getReason() : e.getMessage();
    return entered == null ? "a failure while reading" : entered;
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

  /** An ASCII character followed by a zero byte: what we read begins with an ASCII character. */
  private static boolean isLow(int pair) {
    return (pair & 0xFF) == 0 && pair != 0;
  }

  private static boolean isHigh(int pair) {
    return pair >>> 8 == 0 && pair != 0;
  }

  private static int at(byte[] bytes, int index) {
    return index < bytes.length ? bytes[index] & 0xFF : 0;
  }

  private Content decoded(byte[] bytes) {
    // a decoder that is not entered otherwise reports what is malformed
    CharsetDecoder decoder = UTF_8.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    if (decoder.decode(in, out, true).isError()) {
      return new Content.Refused(notUtf8(source.name(), bytes, in.position()));
    }
    return new Content.Text(Source.of(source.name(), out.flip().toString()));
  }

  private static Problem notUtf8(String name, byte[] bytes, int bad) {
    int start = new String(bytes, 0, bad, UTF_8).length();
    // what cannot be read is shown by the sign Unicode has for it
    Source source = Source.of(name, new String(bytes, UTF_8));
    String hex = Integer.toHexString(bytes[bad] & 0xFF).toUpperCase(Locale.ROOT);
    return Problem.of(source, Kind.NOT_UTF8, "byte " + hex + " (hexadecimal)", SAVE_AGAIN)
        .at(new Span(start, start + 1));
  }
}
