package deadband.cli;

import deadband.document.Problem;
import java.util.List;

/** Ends a command before anything is done: what is wrong, and the exit status it ends with. */
final class Refusal extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final int exit;
  private final transient List<Problem> problems;

  private Refusal(int exit, String says, List<Problem> problems) {
    super(says);
    this.exit = exit;
    this.problems = List.copyOf(problems);
  }

  /** The command was used wrongly. */
  static Refusal wrongUse(String says) {
    return new Refusal(Exit.USAGE, says, List.of());
  }

  /** An input cannot be read. */
  static Refusal unreadable(List<Problem> problems) {
    return new Refusal(Exit.UNREADABLE, "", problems);
  }

  /** There is nothing that the command could do. */
  static Refusal nothing(String says) {
    return new Refusal(Exit.NOTHING_CHECKED, says, List.of());
  }

  /** A part of the program is missing. */
  static Refusal incomplete(String says) {
    return new Refusal(Exit.FAULT, says, List.of());
  }

  int exit() {
    return exit;
  }

  List<Problem> problems() {
    return problems;
  }

  String says() {
    return String.valueOf(getMessage());
  }
}
