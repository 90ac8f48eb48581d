package deadband.cli;

/** The program. */
public final class Main {

  private Main() {}

  public static void main(String[] arguments) {
    System.exit(Program.of(Console.ofProcess()).run(arguments));
  }
}
