package deadband.cli;

import deadband.cli.Inputs.Input;
import deadband.days.DayEvidence;
import deadband.days.DayRuns;
import deadband.document.Printable;
import deadband.document.Problem;
import deadband.document.ProblemText;
import deadband.document.Source;
import deadband.judging.HouseRuleFailure;
import deadband.judging.Judge;
import deadband.judging.Judgement;
import deadband.judging.Trials;
import deadband.limits.Limits;
import deadband.paste.Pasted;
import deadband.reading.SetupReading;
import deadband.remedy.Proposal;
import deadband.remedy.Proposer;
import deadband.report.BriefTable;
import deadband.report.JobRecord;
import deadband.report.JsonReport;
import deadband.report.Layout;
import deadband.report.PasteText;
import deadband.report.Report;
import deadband.report.TextReport;
import deadband.setup.Setup;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The main job: judges setups and prints ranked findings. */
@Command(
    name = "check",
    description = "Checks setup files and prints what is wrong, the worst first.",
    mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(
      arity = "1..*",
      paramLabel = "FILE",
      description =
          "setup files, folders of them, texts with settings such as an email, .jsonl or .jsonl.gz"
              + " files with a setup a line, or - for standard input")
  private List<String> files = new ArrayList<>();

  @Option(
      names = "--name",
      paramLabel = "NAME",
      defaultValue = "standard input",
      description = "name for standard input in the report")
  private String name = "standard input";

  @Option(
      names = "--jsonl",
      description =
          "standard input holds a setup a line, packed by gzip or not; each report names its line")
  private boolean lines;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text (default), json, jsonl, html or markdown")
  private Format format = Format.TEXT;

  @Option(
      names = "--out",
      paramLabel = "PATH",
      description =
          "writes the record in html or markdown to this file; of several setups to this folder, a"
              + " page each and an index")
  private @Nullable Path out;

  @Option(
      names = "--fail-on",
      paramLabel = "VERDICT",
      defaultValue = "answers-needed",
      description = "verdict that exits with 1: answers-needed (default), not-ready or never")
  private Exit.FailOn failOn = Exit.FailOn.ANSWERS_NEEDED;

  @Option(
      names = "--no-remedies",
      description =
          "leaves out remedies, causes and what the settings as found came to: for a first look"
              + " at many homes")
  private boolean noRemedies;

  @Option(
      names = "--no-year",
      description =
          "leaves out the years that are run to weigh remedies, which take the longest: for many"
              + " homes")
  private boolean noYear;

  @Mixin private JudgeOptions judging = new JudgeOptions();
  @Mixin private SaveOption save = new SaveOption();
  @Mixin private EquipmentOption equipment = new EquipmentOption();

  @Option(
      names = "--all",
      description = "lists every open question with the checks that wait for its answer")
  private boolean all;

  @Option(
      names = "--fix",
      description =
          "writes FILE.fixed.json beside a setup file that cannot be read, with every correction"
              + " that is beyond doubt")
  private boolean fix;

  @Option(
      names = "--brief",
      description = "verdict and headlines only, without remedies; of several files a table")
  private boolean brief;

  @Option(
      names = "--color",
      paramLabel = "WHEN",
      defaultValue = "auto",
      description = "auto (default), always or never; NO_COLOR is respected")
  private Console.Colour colour = Console.Colour.AUTO;

  private final List<Fixing> fixes = new ArrayList<>();

  /** Of several files in brief. */
  private final BriefTable table = new BriefTable();

  /** The one file in brief. */
  private String alone = "";

  CheckCommand(Console console) {
    this.console = console;
  }

  /** How a report is written. */
  enum Format {
    TEXT(""),
    JSON(""),
    JSONL(""),
    HTML(".html"),
    MARKDOWN(".md");

    private final String ending;

    Format(String ending) {
      this.ending = ending;
    }

    /** How the name of such a page ends. */
    String ending() {
      return ending;
    }

    /** Whether it is the record to sign, a page for each setup. */
    boolean isPage() {
      return this == HTML || this == MARKDOWN;
    }
  }

  @Override
  public Integer call() {
    if (brief && (all || format != Format.TEXT)) {
      throw Refusal.wrongUse("--brief is a text of its own; leave out --all and --format");
    }
    if (out != null && !format.isPage()) {
      throw Refusal.wrongUse(
          "--out is for --format html or markdown; others go to standard output");
    }
    return format.isPage() ? records() : reports();
  }

  /** A record to sign of each setup. */
  private int records() {
    Inputs inputs = new Inputs(files, name, lines, equipment, console);
    boolean folder = inputs.maybeSeveral();
    if (folder && out == null) {
      throw Refusal.wrongUse(
          "several files make a page each: name a folder for them, as --out records");
    }
    Limits limits = judging.limits();
    LocalDate date = judging.date();
    Outputs writer = save.outputs().writer(console, paths(), folder ? null : out);
    judging.warn(console);
    Saving saving = save.saving(console, paths());
    Closing closing = new Closing();
    RecordFiles pages = new RecordFiles(console, writer, format, out, folder);
    Judge judge = judge(judging.dayRuns());
    inputs.each(input -> record(saving.saved(input), judge, limits, date, pages, closing));
    boolean written = pages.write();
    console.out().flush();
    closing.lines().forEach(console::tell);
    boolean fixed = Fixing.all(fixes, writer, console);
    return written && fixed && !saving.failed()
        ? closing.exit()
        : Math.max(closing.exit(), Exit.UNWRITABLE);
  }

  private boolean record(
      Input input, Judge judge, Limits limits, LocalDate date, RecordFiles pages, Closing closing) {
    SetupReading reading = input.reading().get();
    if (reading instanceof SetupReading.Unreadable unreadable) {
      pages.unreadable(unreadable.name(), unreadable(unreadable));
      unreadable(unreadable, input, closing);
      return true;
    }
    SetupReading.Read read = (SetupReading.Read) reading;
    try {
      Proposal proposal = new Proposer(judge, limits, date, List.of()).propose(read.setup());
      Report report = new Report(read.document(), read.setup(), proposal.before(), read.pasted());
      Judgement judgement = pages.add(new JobRecord(report, proposal, limits, Version.number()));
      closing.judged(Closing.Judged.of(input.path(), judgement, failOn.exit(judgement.verdict())));
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
      pages.unreadable(read.name(), Printable.of(why(fault)) + "\n");
      closing.faulty();
    }
    return true;
  }

  private int reports() {
    Limits limits = judging.limits();
    LocalDate date = judging.date();
    DayRuns runs = judging.dayRuns();
    judging.warn(console);
    Saving saving = save.saving(console, paths());
    Closing closing = new Closing();
    CompletableFuture<Judge> judge = new CompletableFuture<>();
    try (Reports reports = new Reports(console.out(), format);
        InOrder<Input, Answer> answers =
            new InOrder<>(
                inputs -> answers(inputs, judge, runs, limits, date),
                answer -> isTaken(answer, reports, closing))) {
      judge.completeAsync(() -> judge(runs), answers.workers());
      Predicate<Input> saved = input -> answers.add(saving.saved(input), input.bytes());
      if (new Inputs(files, name, lines, equipment, console).each(saved) && answers.finish()) {
        reports.end();
      }
    }
    if (brief) {
      Layout layout = console.layout(colour);
      console.out().print(closing.files() == 1 ? alone : table.text(closing.totals(), layout));
    } else if (format == Format.TEXT) {
      console.out().flush();
      closing.lines().forEach(console::tell);
    }
    boolean fixed = Fixing.all(fixes, save.outputs().writer(console, paths()), console);
    return saving.failed() || !fixed ? Math.max(closing.exit(), Exit.UNWRITABLE) : closing.exit();
  }

  private Judge judge(DayRuns runs) {
    return noYear ? judging.withoutYears(runs) : judging.judge(runs);
  }

  /** The files that are read. */
  private List<Path> paths() {
    List<Path> paths = new ArrayList<>(judging.files());
    files.stream()
        .filter(file -> !file.equals(SetupInput.STANDARD_INPUT))
        .map(Path::of)
        .forEach(paths::add);
    return paths;
  }

  /**
   * What is said of one input.
   *
   * @param counted enters it into the closing
   */
  private record Answer(String report, Consumer<Closing> counted) {}

  private boolean isTaken(Answer answer, Reports reports, Closing closing) {
    answer.counted().accept(closing);
    if (brief) {
      alone = closing.files() == 1 ? answer.report() : "";
      return true;
    }
    return reports.print(answer.report());
  }

  /** What is said of several inputs, judged side by side. For any number of threads. */
  private List<Answer> answers(
      List<Input> inputs,
      CompletableFuture<Judge> judge,
      DayRuns runs,
      Limits limits,
      LocalDate date) {
    List<SetupReading> readings = inputs.stream().map(input -> input.reading().get()).toList();
    List<Setup> setups = new ArrayList<>();
    for (SetupReading reading : readings) {
      if (reading instanceof SetupReading.Read read) {
        setups.add(read.setup());
      }
    }
    if (!judge.isDone()) {
      setups.forEach(setup -> runAhead(setup, runs));
    }
    Iterator<Supplier<Trials>> trials = trials(judge, setups, limits).iterator();
    List<Judged> judged = new ArrayList<>();
    for (SetupReading reading : readings) {
      judged.add(
          reading instanceof SetupReading.Read
              ? judged(reading, judge.join(), trials.next(), date)
              : new Judged(reading, null, null));
    }
    List<Answer> answers = new ArrayList<>();
    for (int i = 0; i < judged.size(); i++) {
      answers.add(answer(inputs.get(i), judged.get(i)));
    }
    return answers;
  }

  /** No rule is made ready where there is nothing to judge. */
  private static List<Supplier<Trials>> trials(
      CompletableFuture<Judge> judge, List<Setup> setups, Limits limits) {
    return setups.isEmpty() ? List.of() : judge.join().trials(setups, limits);
  }

  private void unreadable(SetupReading.Unreadable file, Input input, Closing closing) {
    closing.unreadable();
    if (fix && !input.path().isEmpty()) {
      fixes.add(new Fixing(Path.of(input.path()), file));
    }
  }

  /** Runs the days while the rule book loads. */
  private static void runAhead(Setup setup, DayRuns runs) {
    try {
      DayEvidence.days(setup, runs);
    } catch (RuntimeException fault) {
      // the judge meets the same fault, and says so with the file
    }
  }

  /**
   * What one input came to.
   *
   * @param judgement null where it cannot be read, or there was a fault
   */
  private record Judged(
      SetupReading reading, @Nullable Judgement judgement, @Nullable Throwable fault) {}

  private Judged judged(
      SetupReading reading, Judge judge, Supplier<Trials> trials, LocalDate date) {
    try {
      Judgement judgement =
          noRemedies || brief ? judge.glance(trials.get(), date) : judge.judge(trials.get(), date);
      return new Judged(reading, judgement, null);
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
      return new Judged(reading, null, fault);
    }
  }

  private Answer answer(Input input, Judged judged) {
    if (judged.reading() instanceof SetupReading.Unreadable unreadable) {
      return new Answer(
          unreadable(unreadable),
          closing -> {
            unreadable(unreadable, input, closing);
            if (brief) {
              table.unreadable(unreadable.name());
            }
          });
    }
    SetupReading.Read read = (SetupReading.Read) judged.reading();
    Judgement judgement = judged.judgement();
    if (judgement == null) {
      return faulty(read, Objects.requireNonNull(judged.fault()));
    }
    try {
      Report report = new Report(read.document(), read.setup(), judgement, read.pasted());
      Closing.Judged ended =
          Closing.Judged.of(input.path(), judgement, failOn.exit(judgement.verdict()));
      return new Answer(
          report(report),
          brief
              ? closing -> {
                closing.judged(ended);
                table.judged(report);
              }
              : closing -> closing.judged(ended));
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
      return faulty(read, fault);
    }
  }

  private String report(Report report) {
    return switch (format) {
      case TEXT ->
          brief
              ? understood(report) + TextReport.brief(report, console.layout(colour))
              : understood(report) + TextReport.of(report, console.layout(colour), all);
      case JSON -> JsonReport.of(report, Version.number(), true);
      case JSONL -> JsonReport.of(report, Version.number(), false);
      case HTML, MARKDOWN -> throw new IllegalStateException("a page is no line of a report");
    };
  }

  /** How a pasted text was understood, before the report on it. */
  private String understood(Report report) {
    Pasted pasted = report.pasted();
    if (pasted == null) {
      return "";
    }
    String file = report.document().name();
    Layout layout = console.layout(colour);
    return brief
        ? PasteText.brief(file, pasted, layout)
        : PasteText.of(file, pasted, layout) + "\n";
  }

  private String unreadable(SetupReading.Unreadable file) {
    return switch (format) {
      case TEXT, HTML, MARKDOWN -> ProblemText.of(file.problems(), console.layout(colour).width());
      case JSON -> JsonReport.unreadable(file.name(), file.problems(), Version.number(), true);
      case JSONL -> JsonReport.unreadable(file.name(), file.problems(), Version.number(), false);
    };
  }

  /** One file's fault is its own: it is said in its place, and the others are judged. */
  private Answer faulty(SetupReading.Read read, Throwable fault) {
    return new Answer(
        fault(read, fault),
        closing -> {
          closing.faulty();
          if (brief) {
            table.faulty(read.document().name());
          }
        });
  }

  private String fault(SetupReading.Read read, Throwable fault) {
    String file = read.document().name();
    String says = why(fault);
    if (format == Format.TEXT) {
      return Printable.of(file + ": not judged, " + says) + "\n";
    }
    Problem problem =
        Problem.of(Source.named(file), Problem.Kind.FAULT, says, "a report of this line");
    return JsonReport.unreadable(file, List.of(problem), Version.number(), format == Format.JSON);
  }

  private static String why(Throwable fault) {
    return fault instanceof HouseRuleFailure
        ? "a house rule failed while it was run: " + fault.getMessage()
        : Fault.of(fault);
  }
}
