package deadband.cli;

import deadband.days.DayEvidence;
import deadband.days.DayRuns;
import deadband.document.Document;
import deadband.document.Pointer;
import deadband.judging.Judge;
import deadband.judging.Verdict;
import deadband.limits.Limits;
import deadband.reading.ChangedText;
import deadband.reading.SetupReading;
import deadband.remedy.BestSettings;
import deadband.remedy.Proposal;
import deadband.remedy.Proposer;
import deadband.report.JsonPatch;
import deadband.report.Layout;
import deadband.report.PasteText;
import deadband.report.ProposalText;
import deadband.setup.Change;
import deadband.setup.Setup;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Proposes the changes that bring a setup to sign-off. */
@Command(
    name = "propose",
    description = "Proposes settings that bring a setup to sign-off; each is tried first.",
    mixinStandardHelpOptions = true)
final class ProposeCommand implements Callable<Integer> {

  private final Console console;

  @Mixin private SetupInput input = new SetupInput();
  @Mixin private JudgeOptions judging = new JudgeOptions();
  @Mixin private SaveOption save = new SaveOption();

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "writes the setup with the changes; comments and layout stay as they are")
  private @Nullable Path out;

  @Option(
      names = "--patch",
      paramLabel = "FILE",
      description = "writes the changes as JSON Patch (RFC 6902)")
  private @Nullable Path patch;

  @Option(
      names = "--keep",
      paramLabel = "POINTER",
      description = "a value or section that must not change, such as /relay/start_kW")
  private List<String> keep = new ArrayList<>();

  @Option(
      names = "--best",
      description =
          "searches for the settings with most heat from PV and fewest starts over a year")
  private boolean best;

  @Option(
      names = "--row",
      paramLabel = "N",
      description = "row of the table of --best that --out and --patch write")
  private @Nullable Integer row;

  @Option(
      names = "--sets",
      paramLabel = "N",
      defaultValue = "400",
      description = "number of settings that --best tries (default 400)")
  private int sets = 400;

  ProposeCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    List<Pointer> kept = keep.stream().map(ProposeCommand::pointer).toList();
    if (row != null && !best) {
      throw Refusal.wrongUse("--row is a row of the table of --best; add --best");
    }
    List<Path> inputs = Stream.concat(input.files().stream(), judging.files().stream()).toList();
    Outputs writer = save.outputs().writer(console, inputs, out, patch, save.file());
    Limits limits = judging.limits();
    return propose(input.read(console), kept, limits, writer);
  }

  private static Pointer pointer(String text) {
    boolean dotted = !text.startsWith("/");
    try {
      Pointer place = dotted ? Pointer.ofDotted(text) : Pointer.parse(text);
      KnownPlace.slip(place, dotted)
          .ifPresent(
              slip -> {
                throw Refusal.wrongUse("--keep " + text + ": " + slip);
              });
      return place;
    } catch (IllegalArgumentException e) {
      throw Refusal.wrongUse("--keep " + text + ": " + e.getMessage());
    }
  }

  private int propose(SetupReading.Read read, List<Pointer> kept, Limits limits, Outputs writer) {
    DayRuns runs = judging.dayRuns();
    DayEvidence.days(read.setup(), runs);
    Judge judge = judging.judge(runs, console);
    LocalDate date = judging.date();
    Proposal proposal = new Proposer(judge, limits, date, kept).propose(read.setup());
    if (proposal.before().isEmpty()) {
      throw Refusal.nothing(read.document().name() + ": nothing could be checked");
    }
    Layout layout = console.layout(Console.Colour.NEVER);
    read.paste()
        .ifPresent(
            pasted ->
                console.out().print(PasteText.of(read.document().name(), pasted, layout) + "\n"));
    console.out().print(ProposalText.of(read.document().name(), read.setup(), proposal, layout));
    List<Change> changes =
        best
            ? chosen(new BestSettings(judge, limits, date, kept, sets), read.setup(), proposal)
            : proposal.changes();
    Document file = read.file();
    boolean written =
        new Saving(save.file(), writer).save(read)
            && writer.write(out, text -> text.append(ChangedText.of(file, changes)))
            && writer.write(patch, text -> text.append(JsonPatch.of(file, changes)).append('\n'));
    if (!written) {
      return Exit.UNWRITABLE;
    }
    return proposal.after().verdict() == Verdict.READY ? Exit.READY : Exit.VERDICT;
  }

  /** Prints the best settings; the changes to write are those of the row asked for. */
  private List<Change> chosen(BestSettings search, Setup setup, Proposal proposal) {
    Optional<BestSettings.Front> front =
        new BestSearch(console).print(search, setup, proposal.changes());
    if (row == null) {
      return proposal.changes();
    }
    List<deadband.remedy.Option> rows = front.map(BestSettings.Front::rows).orElse(List.of());
    if (row < 1 || row > rows.size()) {
      throw Refusal.wrongUse("--row " + row + ": the table has " + rows.size() + " rows");
    }
    return rows.get(row - 1).changes();
  }
}
