package deadband.cli;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;

/**
 * Reports as they are written one after the other: those in text with a blank line between them, in
 * JSON as one object or an array, in JSON Lines each as a line.
 *
 * <p>A program that is stopped (Ctrl-C) finishes the report that it is writing, and no other.
 */
final class Reports implements AutoCloseable {

  /** How long a stop waits for one report to be written: a reader may never take it. */
  private static final long PATIENCE_S = 2;

  private final PrintStream out;
  private final CheckCommand.Format format;
  private final ReentrantLock writing = new ReentrantLock();
  private final Thread stop = new Thread(this::stop, "stop");
  private @Nullable String held;
  private boolean several;

  Reports(PrintStream out, CheckCommand.Format format) {
    this.out = out;
    this.format = format;
    Runtime.getRuntime().addShutdownHook(stop);
  }

  /** Takes one report; whether more can be written. */
  boolean print(String report) {
    return switch (format) {
      case TEXT -> write(several ? "\n" + report : report);
      case JSONL -> write(report + "\n");
      case JSON -> hold(report);
      case HTML, MARKDOWN -> throw new IllegalStateException("a page goes to its own file");
    };
  }

  /** The first is held back until it shows whether it is the only one. */
  private boolean hold(String report) {
    if (held == null) {
      held = report;
      return true;
    }
    return write(several ? ",\n" + report : "[\n" + held + ",\n" + report);
  }

  /** Ends what was begun. */
  void end() {
    if (held != null) {
      write(several ? "\n]\n" : held + "\n");
    }
  }

  private boolean write(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    several = true;
    writing.lock();
    try {
      out.write(bytes, 0, bytes.length);
      return !out.checkError();
    } finally {
      writing.unlock();
    }
  }

  /** Keeps for good what every writing needs. */
  private void stop() {
    try {
      writing.tryLock(PATIENCE_S, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    try {
      Runtime.getRuntime().removeShutdownHook(stop);
    } catch (IllegalStateException e) {
      // the program is being stopped already
    }
  }
}
