package deadband.cli;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Spec;

/** Prints what makes a shell complete commands and options. */
@Command(
    name = "completion",
    description = "Prints a script by which bash and zsh complete commands and options.",
    mixinStandardHelpOptions = true)
final class CompletionCommand implements Callable<Integer> {

  private final Console console;

  @Spec private CommandSpec spec = CommandSpec.create();

  CompletionCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    CommandLine program = spec.root().commandLine();
    for (CommandLine command : program.getSubcommands().values()) {
      List.copyOf(command.getCommandSpec().options())
          .forEach(option -> byWords(command.getCommandSpec(), option));
    }
    console.out().print(AutoComplete.bash(spec.root().name(), program));
    return Exit.READY;
  }

  /** Choices are typed as words, not as the constants they are in the code. */
  private static void byWords(CommandSpec command, OptionSpec option) {
    Object[] choices = option.type().getEnumConstants();
    if (choices != null) {
      List<String> words =
          Arrays.stream(choices).map(each -> Program.word((Enum<?>) each)).toList();
      command.remove(option);
      command.addOption(option.toBuilder().completionCandidates(words).build());
    }
  }
}
