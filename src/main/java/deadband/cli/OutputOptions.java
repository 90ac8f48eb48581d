package deadband.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How a command writes the files it was asked for. */
final class OutputOptions {

  @Option(
      names = "--overwrite",
      description = "replaces an output file that exists; an input is never replaced")
  private boolean overwrite;

  /** Whether a file that exists may be replaced. */
  boolean overwrites() {
    return overwrite;
  }

  /**
   * The writer for these files, once it is known that all of them may be written.
   *
   * @param inputs the files that the command reads
   */
  Outputs writer(Console console, List<Path> inputs, @Nullable Path... named) {
    Outputs outputs = new Outputs(console, overwrite, inputs);
    outputs
        .refusal(Arrays.stream(named).filter(Objects::nonNull).toList())
        .ifPresent(
            refusal -> {
              throw Refusal.wrongUse(refusal);
            });
    return outputs;
  }
}
