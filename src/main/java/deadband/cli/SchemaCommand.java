package deadband.cli;

import deadband.report.SetupSchema;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Prints the JSON Schema of a format. */
@Command(
    name = "schema",
    description = "Prints the JSON Schema (draft 2020-12) of the setup file or of a report.",
    mixinStandardHelpOptions = true)
final class SchemaCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(
      arity = "0..1",
      paramLabel = "FORMAT",
      defaultValue = "setup",
      description = "setup (default) or report")
  private What what = What.SETUP;

  SchemaCommand(Console console) {
    this.console = console;
  }

  /** The published formats. */
  enum What {
    SETUP,
    REPORT
  }

  @Override
  public Integer call() throws IOException {
    console.out().println(what == What.SETUP ? SetupSchema.text() : reportSchema());
    return Exit.READY;
  }

  private static String reportSchema() throws IOException {
    try (InputStream schema =
        SetupSchema.class.getResourceAsStream("/deadband/report.schema.json")) {
      if (schema == null) {
        throw new IOException("the schema of a report is missing from this build");
      }
      return new String(schema.readAllBytes(), StandardCharsets.UTF_8).strip();
    }
  }
}
