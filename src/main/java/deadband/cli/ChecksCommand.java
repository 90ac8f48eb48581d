package deadband.cli;

import deadband.judging.RuleBook;
import deadband.report.CheckList;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists the checks. */
@Command(
    name = "checks",
    description = "Lists every check with its class and its one sentence.",
    mixinStandardHelpOptions = true)
final class ChecksCommand implements Callable<Integer> {

  private final Console console;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text (default) or json")
  private Format format = Format.TEXT;

  ChecksCommand(Console console) {
    this.console = console;
  }

  /** How the list is written. */
  enum Format {
    TEXT,
    JSON
  }

  @Override
  public Integer call() {
    CheckList list = new CheckList(RuleBook.builtIn().checks());
    console
        .out()
        .print(
            format == Format.JSON
                ? list.json() + "\n"
                : list.text(console.layout(Console.Colour.NEVER)));
    return Exit.READY;
  }
}
