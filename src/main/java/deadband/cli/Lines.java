package deadband.cli;

import deadband.reading.JsonReading;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import org.jspecify.annotations.Nullable;

/**
 * The lines of a stream as bytes, one at a time. Of a line that is longer than a setup may be only
 * so much is kept that it is seen to be too long.
 */
final class Lines {

  static final int BUFFER = 1 << 16;

  private final InputStream in;
  private final byte[] buffer = new byte[BUFFER];
  private int from;
  private int until;
  private final ByteArrayOutputStream line = new ByteArrayOutputStream();

  Lines(InputStream in) {
    this.in = in;
  }

  /** The next line without its end; null after the last. */
  byte @Nullable [] next() throws IOException {
    line.reset();
    boolean any = false;
    while (from < until || filled()) {
      any = true;
      int end = from;
      while (end < until && buffer[end] != '\n') {
        end++;
      }
      keep(end - from);
      boolean ended = end < until;
      from = ended ? end + 1 : end;
      if (ended) {
        break;
      }
    }
    return any ? line.toByteArray() : null;
  }

  private boolean filled() throws IOException {
    from = 0;
    until = Math.max(0, in.read(buffer, 0, buffer.length));
    return until > 0;
  }

  private void keep(int length) {
    int room = JsonReading.MOST_BYTES + 1 - line.size();
    line.write(buffer, from, Math.min(length, room));
  }
}
