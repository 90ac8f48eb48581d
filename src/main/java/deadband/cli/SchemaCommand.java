package deadband.cli;

import deadband.report.Comparison;
import deadband.report.DayReport;
import deadband.report.DiagnosisReport;
import deadband.report.JsonReport;
import deadband.report.SetupSchema;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Prints the JSON Schema of a format. */
@Command(
    name = "schema",
    description =
        "Prints the JSON Schema (draft 2020-12) of the setup file, of a report, a simulation, a"
            + " comparison or a diagnosis.",
    mixinStandardHelpOptions = true)
final class SchemaCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(
      arity = "0..1",
      paramLabel = "FORMAT",
      defaultValue = "setup",
      description = "setup (default), report, simulation, comparison or diagnosis")
  private What what = What.SETUP;

  SchemaCommand(Console console) {
    this.console = console;
  }

  /** The published formats. */
  enum What {
    SETUP,
    REPORT,
    SIMULATION,
    COMPARISON,
    DIAGNOSIS
  }

  @Override
  public Integer call() {
    console
        .out()
        .println(
            switch (what) {
              case SETUP -> SetupSchema.text();
              case REPORT -> JsonReport.schema();
              case SIMULATION -> DayReport.schema();
              case COMPARISON -> Comparison.schema();
              case DIAGNOSIS -> DiagnosisReport.schema();
            });
    return Exit.READY;
  }
}
