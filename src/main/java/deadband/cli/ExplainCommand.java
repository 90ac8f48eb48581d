package deadband.cli;

import deadband.document.NearestName;
import deadband.judging.Check;
import deadband.judging.RuleBook;
import deadband.report.PageText;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows the page of a check. */
@Command(
    name = "explain",
    description = "Shows the page of a check: what it looks at, why, its limits, what it misses.",
    mixinStandardHelpOptions = true)
final class ExplainCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(paramLabel = "CHECK", description = "name of a check, as in a finding")
  private String name = "";

  ExplainCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    List<Check> checks = RuleBook.builtInChecks();
    Optional<Check> check = checks.stream().filter(each -> each.isNamed(name)).findFirst();
    if (check.isEmpty()) {
      return unknown(checks);
    }
    if (!check.get().name().equals(name)) {
      console.tell(name + " is now called " + check.get().name());
    }
    console.out().print(PageText.of(check.get(), console.layout(Console.Colour.NEVER)));
    return Exit.READY;
  }

  private int unknown(List<Check> checks) {
    List<String> names = checks.stream().map(Check::name).toList();
    console.tell("no such check: " + name);
    NearestName.of(name, names).ifPresent(near -> console.tell("nearest: " + near));
    console.tell("all of them: deadband checks");
    return Exit.USAGE;
  }
}
