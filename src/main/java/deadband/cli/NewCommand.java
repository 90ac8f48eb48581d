package deadband.cli;

import deadband.days.DayRuns;
import deadband.judging.Judge;
import deadband.judging.RuleBook;
import deadband.limits.Limits;
import deadband.reading.EquipmentFolder;
import deadband.reading.SetupReading;
import deadband.report.StarterFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Gives a setup file to be filled in, or fills it in by questions. */
@Command(
    name = "new",
    description = {
      "Fills in a setup file by questions on a terminal, a topic at a time; elsewhere writes a"
          + " commented setup file to be filled in, or prints it where no file is named."
    },
    mixinStandardHelpOptions = true)
final class NewCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(arity = "0..1", paramLabel = "FILE", description = "file to write (default: printed)")
  private @Nullable Path file;

  @Option(
      names = "--for",
      paramLabel = "HOME",
      description =
          "immersion-only, heat-pump, three-phase or battery: enters as not fitted what such a home"
              + " does not have (immersion-only: heat pump, relay, battery; heat-pump and"
              + " three-phase: battery)")
  private StarterFile.@Nullable Home home;

  @Option(names = "--template", description = "writes the file to be filled in, no questions")
  private boolean template;

  @Option(names = "--questions", description = "questions, also where there is no terminal")
  private boolean questions;

  @Option(names = "--continue", description = "goes on with a file begun before, by questions")
  private boolean again;

  @Mixin private EquipmentOption equipment = new EquipmentOption();
  @Mixin private OutputOptions outputs = new OutputOptions();

  NewCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (again && home != null) {
      throw Refusal.wrongUse("--for begins a file; --continue goes on with one that is there");
    }
    if (template && (again || questions)) {
      throw Refusal.wrongUse("--template puts no questions; leave it out, or the other option");
    }
    Path named = file;
    if (named == null) {
      if (questions || again) {
        throw Refusal.wrongUse("name the file that the answers are to be saved in");
      }
      console.out().print(StarterFile.text(home));
      return Exit.READY;
    }
    if (again || questions || (console.isTerminal() && !template)) {
      return interview(named);
    }
    return outputs
            .writer(console, List.of(), named)
            .write(named, text -> text.append(StarterFile.text(home)))
        ? Exit.READY
        : Exit.UNWRITABLE;
  }

  private int interview(Path named) {
    if (!again) {
      refuseToReplace(named);
    }
    SetupReading begun = again ? SetupReading.ofFile(named) : read(named, StarterFile.text(home));
    SetupReading whole = equipment.withSheets(begun, named);
    if (whole instanceof SetupReading.Unreadable unreadable) {
      throw Refusal.unreadable(unreadable.problems());
    }
    Outputs writer = new Outputs(console, true, List.of());
    Judge judge = new Judge(RuleBook.builtIn(), DayRuns.remembered());
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    EquipmentFolder folder = equipment.of(named);
    return new Interview(
            console,
            (SetupReading.Read) whole,
            new EquipmentChoice(folder == null ? List.of() : folder.names()),
            text -> equipment.withSheets(read(named, text), named),
            setup -> judge.glance(setup, Limits.standard(), today),
            document -> writer.write(named, text -> text.append(document.text())))
        .run();
  }

  /** The file of the answers so far is gone on with only where that is said. */
  private void refuseToReplace(Path named) {
    if (Files.isRegularFile(named) && !outputs.overwrites()) {
      throw Refusal.wrongUse(
          named + " already exists; --continue goes on with it, --overwrite begins anew");
    }
    outputs.writer(console, List.of(), named);
  }

  private static SetupReading read(Path named, String text) {
    return SetupReading.ofText(named.toString(), text);
  }
}
