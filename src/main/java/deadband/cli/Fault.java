package deadband.cli;

import deadband.judging.CheckFault;
import java.util.Arrays;
import java.util.Objects;

/** What the program says of a fault of its own: one line, fit to be reported. */
final class Fault {

  private static final String OURS = "deadband.";

  private Fault() {}

  /** What went wrong, the check at work where that is known, and how to report it. */
  static String of(Throwable fault) {
    String check = fault instanceof CheckFault at ? "in " + at.checks() + " " : "";
    return "a fault of the program "
        + check
        + "("
        + inmost(fault)
        + "), version "
        + Version.number()
        + "; please report this line together with the file";
  }

  private static String inmost(Throwable fault) {
    Throwable inmost = fault;
    while (inmost.getCause() != null && inmost.getCause() != inmost) {
      inmost = inmost.getCause();
    }
    String message = Objects.requireNonNullElse(inmost.getMessage(), "");
    String says = message.lines().findFirst().map(line -> ": " + line).orElse("");
    return inmost.getClass().getSimpleName() + place(inmost) + says;
  }

  private static String place(Throwable fault) {
    return Arrays.stream(fault.getStackTrace())
        .filter(frame -> frame.getClassName().startsWith(OURS))
        .findFirst()
        .map(frame -> " at " + frame.getFileName() + ":" + frame.getLineNumber())
        .orElse("");
  }
}
