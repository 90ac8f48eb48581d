package deadband.cli;

import deadband.document.Printable;
import java.io.File;
import java.util.Optional;
import java.util.regex.Pattern;

/** A file name as it may be typed, so that a line that is shown can be run as it stands. */
final class ShellWord {

  private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9_./,:@%+=-]+");

  private ShellWord() {}

  /** The name as one word of this machine's shell; empty where it holds what cannot be shown. */
  static Optional<String> of(String name) {
    return of(name, File.separatorChar == '\\');
  }

  static Optional<String> of(String name, boolean windows) {
    if (!Printable.of(name).equals(name) || (windows && name.contains("\""))) {
      return Optional.empty();
    }
    // a name that begins with a hyphen would be taken for an option
    String path = name.startsWith("-") ? "." + (windows ? "\\" : "/") + name : name;
    if (PLAIN.matcher(windows ? path.replace('\\', '/') : path).matches()) {
      return Optional.of(path);
    }
    return Optional.of(windows ? '"' + path + '"' : "'" + path.replace("'", "'\\''") + "'");
  }
}
