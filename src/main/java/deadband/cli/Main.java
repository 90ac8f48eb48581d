package deadband.cli;

/** The program. */
public final class Main {

  private Main() {}

  public static void main(String[] arguments) {
    System.exit(status(arguments));
  }

  private static int status(String... arguments) {
    try {
      return HouseLoader.wanted(arguments) ? HouseLoader.run(arguments) : run(arguments);
    } catch (Throwable fault) {
      return failed(fault);
    }
  }

  /** Runs one command line on the console of this process and gives the exit status. */
  public static int run(String... arguments) {
    try {
      return Program.of(Console.ofProcess()).run(arguments);
    } catch (Throwable fault) {
      return failed(fault);
    }
  }

  /** One sentence, made with nothing that may be missing: a jar may be, or may be cut short. */
  private static int failed(Throwable fault) {
    Console.lastWord(
        fault instanceof LinkageError
            ? "deadband: a part of the program is missing or damaged: unpack the whole folder again."
            : "deadband: could not finish: "
                + fault.toString().replaceAll("\\p{Cntrl}.*", "")
                + "; please report it.");
    return 70;
  }
}
