package deadband.cli;

import deadband.days.DayEvidence;
import deadband.days.DayRuns;
import deadband.document.Printable;
import deadband.document.Problem;
import deadband.document.ProblemText;
import deadband.document.Source;
import deadband.judging.HouseRuleFailure;
import deadband.judging.Judge;
import deadband.judging.Judgement;
import deadband.limits.Limits;
import deadband.reading.SetupReading;
import deadband.report.JsonReport;
import deadband.report.Report;
import deadband.report.TextReport;
import deadband.setup.Setup;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
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
      description = "setup files, folders of them, or - for standard input")
  private List<String> files = new ArrayList<>();

  @Option(
      names = "--name",
      paramLabel = "NAME",
      defaultValue = "standard input",
      description = "name for standard input in the report")
  private String name = "standard input";

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text (default), json or jsonl")
  private Format format = Format.TEXT;

  @Option(
      names = "--fail-on",
      paramLabel = "VERDICT",
      defaultValue = "answers-needed",
      description = "verdict that exits with 1: answers-needed (default), not-ready or never")
  private Exit.FailOn failOn = Exit.FailOn.ANSWERS_NEEDED;

  @Mixin private JudgeOptions judging = new JudgeOptions();

  @Option(
      names = "--color",
      paramLabel = "WHEN",
      defaultValue = "auto",
      description = "auto (default), always or never; NO_COLOR is respected")
  private Console.Colour colour = Console.Colour.AUTO;

  CheckCommand(Console console) {
    this.console = console;
  }

  /** How a report is written. */
  enum Format {
    TEXT,
    JSON,
    JSONL
  }

  @Override
  public Integer call() {
    Limits limits = judging.limits();
    List<SetupReading> readings = readings();
    DayRuns runs = judging.dayRuns();
    runAhead(readings, runs);
    Judge judge = judging.judge(runs, console);
    LocalDate date = judging.date();
    Closing closing = new Closing();
    List<String> reports = new ArrayList<>();
    for (SetupReading reading : readings) {
      reports.add(report(reading, judge, limits, date, closing));
    }
    print(reports);
    if (format == Format.TEXT) {
      console.out().flush();
      closing.lines().forEach(console::tell);
    }
    return closing.exit();
  }

  /** Runs the days on a thread of their own, while the rule book loads. */
  private static void runAhead(List<SetupReading> readings, DayRuns runs) {
    Thread ahead =
        new Thread(
            () -> {
              for (SetupReading reading : readings) {
                if (reading instanceof SetupReading.Read read) {
                  runAhead(read.setup(), runs);
                }
              }
            },
            "day runs");
    ahead.setDaemon(true);
    ahead.start();
  }

  private static void runAhead(Setup setup, DayRuns runs) {
    try {
      DayEvidence.days(setup, runs);
    } catch (RuntimeException fault) {
      // the judge meets the same fault, and says so with the file
    }
  }

  private List<SetupReading> readings() {
    List<SetupReading> readings = new ArrayList<>();
    for (String file : files) {
      if (file.equals(SetupInput.STANDARD_INPUT)) {
        readings.add(SetupReading.ofStream(name, console.in()));
      } else {
        readings.addAll(within(Path.of(file)));
      }
    }
    return readings;
  }

  /** The file itself, or the setup files in a folder, by name. */
  private List<SetupReading> within(Path path) {
    if (!Files.isDirectory(path)) {
      return List.of(SetupReading.ofFile(path));
    }
    SetupFiles folder = SetupFiles.in(path);
    folder.skipped().forEach(console::tell);
    return folder.readings();
  }

  private String report(
      SetupReading reading, Judge judge, Limits limits, LocalDate date, Closing closing) {
    if (reading instanceof SetupReading.Unreadable unreadable) {
      closing.unreadable();
      return unreadable(unreadable);
    }
    SetupReading.Read read = (SetupReading.Read) reading;
    try {
      Judgement judgement = judge.judge(read.setup(), limits, date);
      String report = report(new Report(read.document(), read.setup(), judgement));
      closing.judged(path(read), judgement, failOn.exit(judgement.verdict()));
      return report;
    } catch (RuntimeException | StackOverflowError fault) {
      closing.faulty();
      return faulty(read, fault);
    }
  }

  private String report(Report report) {
    return switch (format) {
      case TEXT -> TextReport.of(report, console.layout(colour));
      case JSON -> JsonReport.of(report, Version.number(), true);
      case JSONL -> JsonReport.of(report, Version.number(), false);
    };
  }

  /** Where the file can be read again; empty for standard input. */
  private String path(SetupReading.Read read) {
    String file = read.document().name();
    return files.contains(SetupInput.STANDARD_INPUT) && file.equals(name) ? "" : file;
  }

  private String unreadable(SetupReading.Unreadable file) {
    return switch (format) {
      case TEXT -> ProblemText.of(file.problems(), console.layout(colour).width());
      case JSON -> JsonReport.unreadable(file.name(), file.problems(), Version.number(), true);
      case JSONL -> JsonReport.unreadable(file.name(), file.problems(), Version.number(), false);
    };
  }

  /** One file's fault is its own: it is said in its place, and the others are judged. */
  private String faulty(SetupReading.Read read, Throwable fault) {
    String file = read.document().name();
    String says =
        fault instanceof HouseRuleFailure
            ? "a house rule failed while it was run: " + fault.getMessage()
            : Fault.of(fault);
    if (format == Format.TEXT) {
      return Printable.of(file + ": not judged, " + says) + "\n";
    }
    Problem problem =
        Problem.of(Source.named(file), Problem.Kind.FAULT, says, "a report of this line");
    return JsonReport.unreadable(file, List.of(problem), Version.number(), format == Format.JSON);
  }

  private void print(List<String> reports) {
    switch (format) {
      case TEXT -> console.out().print(String.join("\n", reports));
      case JSONL -> reports.forEach(report -> console.out().print(report + "\n"));
      case JSON ->
          console
              .out()
              .print(
                  reports.size() == 1
                      ? reports.get(0) + "\n"
                      : "[\n" + String.join(",\n", reports) + "\n]\n");
    }
  }
}
