package deadband.cli;

import deadband.reading.SetupReading;
import deadband.report.PasteText;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The one setup file that a command works on. */
final class SetupInput {

  static final String STANDARD_INPUT = "-";

  @Parameters(paramLabel = "FILE", description = "setup file, or - for standard input")
  private String file = "";

  @Option(
      names = "--name",
      paramLabel = "NAME",
      defaultValue = "standard input",
      description = "name for standard input in the report")
  private String name = "standard input";

  @Mixin private EquipmentOption equipment = new EquipmentOption();

  /** The setup; how a text was understood is said on standard error. */
  SetupReading.Read told(Console console) {
    SetupReading.Read read = read(console);
    read.paste()
        .ifPresent(
            pasted ->
                console
                    .err()
                    .print(
                        PasteText.of(read.name(), pasted, console.layout(Console.Colour.NEVER))));
    return read;
  }

  SetupReading.Read read(Console console) {
    SetupReading reading =
        file.equals(STANDARD_INPUT)
            ? equipment.withSheets(SetupReading.ofStream(name, console.in()), null)
            : equipment.withSheets(SetupReading.ofFile(Path.of(file)), Path.of(file));
    if (reading instanceof SetupReading.Unreadable unreadable) {
      throw Refusal.unreadable(unreadable.problems());
    }
    return (SetupReading.Read) reading;
  }

  /** The files it is read from. */
  List<Path> files() {
    return file.equals(STANDARD_INPUT) ? List.of() : List.of(Path.of(file));
  }
}
