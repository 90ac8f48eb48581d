package deadband.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * One run of the program inside a test.
 *
 * @param exit status
 * @param out standard output
 * @param err standard error
 */
record CommandLineRun(int exit, String out, String err) {

  static CommandLineRun of(String... arguments) {
    return with("", Map.of(), arguments);
  }

  static CommandLineRun with(String input, Map<String, String> environment, String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console =
        Console.of(
            new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
            out,
            err,
            environment);
    int exit = Program.of(console).run(arguments);
    return new CommandLineRun(
        exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
