package deadband.cli;

import deadband.reading.SetupReading;
import deadband.report.CommissioningSheet;
import deadband.report.Report;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes the sheet that is taken to site. */
@Command(
    name = "sheet",
    description = "Writes the commissioning sheet of a setup: settings, tests, expected readings.",
    mixinStandardHelpOptions = true)
final class SheetCommand implements Callable<Integer> {

  private final Console console;

  @Mixin private SetupInput input = new SetupInput();
  @Mixin private OutputOptions outputs = new OutputOptions();
  @Mixin private JudgeOptions judging = new JudgeOptions();

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text (default) or html")
  private Format format = Format.TEXT;

  @Option(names = "--out", paramLabel = "FILE", description = "writes the sheet to this file")
  private @Nullable Path out;

  SheetCommand(Console console) {
    this.console = console;
  }

  /** How a sheet is written. */
  enum Format {
    TEXT,
    HTML
  }

  @Override
  public Integer call() {
    List<Path> inputs = new ArrayList<>(input.files());
    inputs.addAll(judging.files());
    Outputs writer = outputs.writer(console, inputs, out);
    SetupReading.Read read = input.read(console);
    Report report =
        new Report(
            read.document(),
            read.setup(),
            judging
                .judge(judging.dayRuns(), console)
                .glance(read.setup(), judging.limits(), judging.date()));
    String text =
        format == Format.HTML
            ? CommissioningSheet.html(report, Version.number())
            : CommissioningSheet.text(
                report, Version.number(), console.layout(Console.Colour.NEVER));
    if (out != null) {
      return writer.write(out, to -> to.append(text)) ? Exit.READY : Exit.UNWRITABLE;
    }
    console.out().print(text);
    return Exit.READY;
  }
}
