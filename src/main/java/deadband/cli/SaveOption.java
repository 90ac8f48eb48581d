package deadband.cli;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes a setup file of what was understood of a pasted text. */
final class SaveOption {

  @Option(
      names = "--save",
      paramLabel = "FILE",
      description = "writes a setup file of a text, each value with its line as a comment")
  private @Nullable Path save;

  @Mixin private OutputOptions outputs = new OutputOptions();

  /** The file to be written, for a command that writes others too. */
  @Nullable Path file() {
    return save;
  }

  OutputOptions outputs() {
    return outputs;
  }

  /** The file to be written of the one text that is read. */
  Saving saving(Console console, List<Path> inputs) {
    return new Saving(save, outputs.writer(console, inputs, save));
  }
}
