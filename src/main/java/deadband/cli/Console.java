package deadband.cli;

import deadband.document.Printable;
import deadband.report.Layout;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * Where the program reads and writes. Everything is UTF-8, whatever the machine is set to.
 *
 * @param terminal columns of the terminal that standard output goes to, empty where it is none; the
 *     launcher says so, since Java alone cannot tell
 */
record Console(
    InputStream in,
    PrintStream out,
    PrintStream err,
    Map<String, String> environment,
    String terminal) {

  private static final int COLUMNS = 80;

  /** The console of this process. */
  static Console ofProcess() {
    return new Console(
        System.in,
        utf8(new FileOutputStream(FileDescriptor.out)),
        utf8(new FileOutputStream(FileDescriptor.err)),
        System.getenv(),
        System.getProperty("deadband.terminal", ""));
  }

  /** A line on standard error where nothing else can be made any more. */
  static void lastWord(String line) {
    System.err.println(line);
  }

  /** A console that writes elsewhere, for tests. */
  static Console of(
      InputStream in, OutputStream out, OutputStream err, Map<String, String> environment) {
    return new Console(in, utf8(out), utf8(err), environment, "");
  }

  private static PrintStream utf8(OutputStream stream) {
    return new PrintStream(new BufferedOutputStream(stream), false, StandardCharsets.UTF_8);
  }

  /** The layout for a text report, as wide as the terminal. */
  Layout layout(Colour colour) {
    return Layout.of(columns(), colour.isOn(!terminal.isEmpty(), environment));
  }

  /** Whether a person watches. */
  boolean isTerminal() {
    return !terminal.isEmpty();
  }

  private int columns() {
    String columns = environment.getOrDefault("COLUMNS", terminal);
    return columns.matches("\\d{1,4}") ? Integer.parseInt(columns) : COLUMNS;
  }

  /** When colour is used. */
  enum Colour {
    AUTO,
    ALWAYS,
    NEVER;

    private boolean isOn(boolean terminal, Map<String, String> environment) {
      return switch (this) {
        case ALWAYS -> true;
        case NEVER -> false;
        case AUTO ->
            terminal
                && environment.getOrDefault("NO_COLOR", "").isEmpty()
                && !"dumb".equals(environment.get("TERM"));
      };
    }
  }

  /** A line on standard error, with nothing in it that could drive the terminal. */
  void tell(String line) {
    err.println(Printable.of(line));
  }

  /** Lines on standard error that are laid out already. */
  void tellLines(String lines) {
    err.print(lines);
  }

  /** Writes out what is still held back; whether standard output took everything. */
  boolean flush() {
    boolean whole = !out.checkError();
    err.flush();
    return whole;
  }
}
