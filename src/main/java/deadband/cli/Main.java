package deadband.cli;

/** The program. */
public final class Main {

  private Main() {}

  public static void main(String[] arguments) {
    System.exit(HouseLoader.wanted(arguments) ? HouseLoader.run(arguments) : run(arguments));
  }

  /** Runs one command line on the console of this process and gives the exit status. */
  public static int run(String... arguments) {
    return Program.of(Console.ofProcess()).run(arguments);
  }
}
