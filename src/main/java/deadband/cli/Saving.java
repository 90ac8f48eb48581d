package deadband.cli;

import deadband.cli.Inputs.Input;
import deadband.document.Document;
import deadband.reading.SetupReading;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Writes the setup file of a pasted text, at most one in a run. */
final class Saving {

  private final @Nullable Path file;
  private final Outputs writer;
  private boolean begun;
  private boolean failed;

  Saving(@Nullable Path file, Outputs writer) {
    this.file = file;
    this.writer = writer;
  }

  /** Whether the file could not be written. */
  boolean failed() {
    return failed;
  }

  /** An input, saved where that is asked for. */
  Input saved(Input input) {
    if (file == null) {
      return input;
    }
    if (begun) {
      throw Refusal.wrongUse("--save writes one setup file; name one text");
    }
    begun = true;
    SetupReading reading = input.reading().get();
    if (reading instanceof SetupReading.Read read) {
      save(read);
    }
    return new Input(input.path(), input.bytes(), () -> reading);
  }

  /** Writes what was understood; false where it could not be written. */
  boolean save(SetupReading.Read read) {
    if (file == null) {
      return true;
    }
    if (read.pasted() == null) {
      throw Refusal.wrongUse(
          "--save is for a text with settings; " + read.name() + " is a setup file already");
    }
    Document document = read.file();
    failed = !writer.write(file, text -> text.append(document.text()));
    return !failed;
  }
}
