package deadband.cli;

import deadband.report.StarterFile;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Gives a setup file to be filled in. */
@Command(
    name = "new",
    description = "Writes a commented setup file to be filled in, or prints it.",
    mixinStandardHelpOptions = true)
final class NewCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(arity = "0..1", paramLabel = "FILE", description = "file to write (default: printed)")
  private @Nullable Path file;

  @Mixin private OutputOptions outputs = new OutputOptions();

  NewCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (file == null) {
      console.out().print(StarterFile.text());
      return Exit.READY;
    }
    Outputs writer = outputs.writer(console, List.of(), file);
    return writer.write(file, text -> text.append(StarterFile.text()))
        ? Exit.READY
        : Exit.UNWRITABLE;
  }
}
