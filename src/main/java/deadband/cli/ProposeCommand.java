package deadband.cli;

import deadband.days.DayEvidence;
import deadband.days.DayRuns;
import deadband.days.YearRuns;
import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.document.ProblemText;
import deadband.judging.Judge;
import deadband.judging.RuleBook;
import deadband.judging.Verdict;
import deadband.limits.Limits;
import deadband.reading.ChangedText;
import deadband.reading.LimitsReading;
import deadband.reading.SetupReading;
import deadband.remedy.BestSettings;
import deadband.remedy.Proposal;
import deadband.remedy.Proposer;
import deadband.report.JsonPatch;
import deadband.report.Layout;
import deadband.report.ProposalText;
import deadband.setup.Change;
import deadband.setup.Setup;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Proposes the changes that bring a setup to sign-off. */
@Command(
    name = "propose",
    description = "Proposes the settings that bring a setup to sign-off, each tried first.",
    mixinStandardHelpOptions = true)
final class ProposeCommand implements Callable<Integer> {

  private static final String STANDARD_INPUT = "-";

  private final Console console;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE", description = "setup file, or - for standard input")
  private String file = "";

  @Option(
      names = "--name",
      paramLabel = "NAME",
      defaultValue = "standard input",
      description = "name for standard input in the report")
  private String name = "standard input";

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "writes the setup with the changes; comments and layout stay as they are")
  private @Nullable Path out;

  @Option(
      names = "--overwrite",
      description = "lets --out and --patch replace a file that is there, but never an input")
  private boolean overwrite;

  @Option(
      names = "--patch",
      paramLabel = "FILE",
      description = "writes the changes as JSON Patch (RFC 6902)")
  private @Nullable Path patch;

  @Option(
      names = "--keep",
      paramLabel = "POINTER",
      description = "a value or section that is not to be changed, such as /relay/start_kW")
  private List<String> keep = new ArrayList<>();

  @Option(
      names = "--best",
      description = "looks for the settings with most heat from PV and fewest starts over a year")
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
      description = "sets of settings that --best looks at (default 400)")
  private int sets = 400;

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = "date against which accepted findings are held (default today)")
  private @Nullable LocalDate asOf;

  @Option(
      names = "--limits",
      paramLabel = "FILE",
      description = "limits of this site, in place of the rule book's own")
  private @Nullable Path limitsFile;

  ProposeCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    List<Pointer> kept = keep.stream().map(this::pointer).toList();
    if (row != null && !best) {
      throw wrong("--row is a row of the table of --best; add --best");
    }
    Outputs outputs = outputs();
    outputs
        .refusal(Stream.of(out, patch).filter(Objects::nonNull).toList())
        .ifPresent(
            refusal -> {
              throw wrong(refusal);
            });
    LimitsReading limits =
        limitsFile == null ? LimitsReading.none() : LimitsReading.ofFile(limitsFile);
    if (limits instanceof LimitsReading.Unreadable unreadable) {
      return unreadable(unreadable.problems());
    }
    SetupReading reading =
        file.equals(STANDARD_INPUT)
            ? SetupReading.ofStream(name, console.in())
            : SetupReading.ofFile(Path.of(file));
    if (reading instanceof SetupReading.Unreadable unreadable) {
      return unreadable(unreadable.problems());
    }
    return propose(
        (SetupReading.Read) reading, kept, ((LimitsReading.Read) limits).limits(), outputs);
  }

  private Pointer pointer(String text) {
    boolean dotted = !text.startsWith("/");
    try {
      Pointer place = dotted ? Pointer.ofDotted(text) : Pointer.parse(text);
      KnownPlace.slip(place, dotted)
          .ifPresent(
              slip -> {
                throw wrong("--keep " + text + ": " + slip);
              });
      return place;
    } catch (IllegalArgumentException e) {
      throw wrong("--keep " + text + ": " + e.getMessage());
    }
  }

  private Outputs outputs() {
    List<Path> inputs = new ArrayList<>();
    if (!file.equals(STANDARD_INPUT)) {
      inputs.add(Path.of(file));
    }
    if (limitsFile != null) {
      inputs.add(limitsFile);
    }
    return new Outputs(console, overwrite, inputs);
  }

  private int propose(SetupReading.Read read, List<Pointer> kept, Limits limits, Outputs outputs) {
    DayRuns runs = DayRuns.remembered();
    DayEvidence.days(read.setup(), runs);
    Judge judge = new Judge(RuleBook.builtIn(), runs, YearRuns.remembered());
    LocalDate date = asOf == null ? LocalDate.now(ZoneId.systemDefault()) : asOf;
    Proposal proposal = new Proposer(judge, limits, date, kept).propose(read.setup());
    if (proposal.before().isEmpty()) {
      console.tell(read.document().name() + ": nothing could be checked");
      return Exit.NOTHING_CHECKED;
    }
    Layout layout = console.layout(Console.Colour.NEVER);
    console.out().print(ProposalText.of(read.document().name(), read.setup(), proposal, layout));
    List<Change> changes =
        best
            ? chosen(new BestSettings(judge, limits, date, kept, sets), read.setup(), proposal)
            : proposal.changes();
    boolean written =
        outputs.write(out, text -> text.append(ChangedText.of(read.document(), changes)))
            && outputs.write(
                patch, text -> text.append(JsonPatch.of(read.document(), changes)).append('\n'));
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
      throw wrong("--row " + row + ": rows in the table: " + rows.size());
    }
    return rows.get(row - 1).changes();
  }

  private int unreadable(List<Problem> problems) {
    int width = console.layout(Console.Colour.NEVER).width();
    console.err().print(ProblemText.of(problems, width));
    return Exit.UNREADABLE;
  }

  private ParameterException wrong(String says) {
    return new ParameterException(spec.commandLine(), says);
  }
}
