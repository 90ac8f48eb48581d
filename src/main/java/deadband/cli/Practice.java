package deadband.cli;

import java.util.List;

/**
 * What the launcher has run when it makes a class archive: commands that are used by hand. Exit
 * status 0 where all of them ran, whatever their verdict.
 */
final class Practice {

  private Practice() {}

  public static void main(String[] setup) {
    List<List<String>> commands =
        List.of(
            List.of("--version"),
            List.of("--help"),
            List.of("checks"),
            List.of("explain", "buffer-too-small"),
            List.of("propose", setup[0]),
            List.of("check", setup[0]));
    for (List<String> command : commands) {
      int exit = Main.run(command.toArray(String[]::new));
      if (exit > Exit.VERDICT) {
        System.exit(exit);
      }
    }
    System.exit(Exit.READY);
  }
}
