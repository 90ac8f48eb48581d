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
      description = "text (default), json or markdown")
  private Format format = Format.TEXT;

  ChecksCommand(Console console) {
    this.console = console;
  }

  /** How the list is written. */
  enum Format {
    TEXT,
    JSON,
    MARKDOWN
  }

  @Override
  public Integer call() {
    CheckList list = new CheckList(RuleBook.builtInChecks());
    console
        .out()
        .print(
            switch (format) {
              case TEXT -> list.text(console.layout(Console.Colour.NEVER));
              case JSON -> list.json() + "\n";
              case MARKDOWN -> list.markdown(RuleBook.EDITION);
            });
    return Exit.READY;
  }
}
