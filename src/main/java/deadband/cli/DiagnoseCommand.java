package deadband.cli;

import deadband.diagnosis.Diagnosis;
import deadband.diagnosis.ObservedWords;
import deadband.judging.Finding;
import deadband.judging.Judge;
import deadband.meterlog.Meaning;
import deadband.meterlog.MeterLog;
import deadband.reading.LogOptions;
import deadband.reading.LogReading;
import deadband.reading.SetupReading;
import deadband.report.DiagnosisReport;
import deadband.report.Layout;
import deadband.report.PasteText;
import deadband.setup.Setup;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds why a heat pump short-cycles, by meter logs and by what was observed. */
@Command(
    name = "diagnose",
    description = "Ranks the causes of short-cycling by a meter log, or by what was observed.",
    mixinStandardHelpOptions = true,
    footerHeading = "%nExit status:%n",
    footer = {
      "  0   nothing unusual",
      "  1   a fault is likely",
      "  2   wrong use of the command",
      "  3   some input could not be read",
      "  4   neither can be said"
    })
final class DiagnoseCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "setup file or pasted text, or - for standard input; without it, the log alone")
  private @Nullable String file;

  @Mixin private JudgeOptions judging = new JudgeOptions();

  @Option(
      names = "--log",
      paramLabel = "METER",
      description =
          "a meter log: CSV with time and any of grid, import, export, PV, heat pump, immersion,"
              + " house, tank; Green Button XML; DSMR P1 telegrams; may be given again")
  private List<Path> logs = List.of();

  @Option(
      names = "--observed",
      paramLabel = "TEXT",
      description = "what was seen, such as \"8 starts an hour, runs 4 min, sunny, since Tuesday\"")
  private String observed = "";

  @Option(
      names = "--column",
      paramLabel = "NAME=MEANING",
      description = "what a column of the log is, such as \"Channel 3=heat-pump\"")
  private Map<String, String> columns = Map.of();

  @Option(names = "--meter", paramLabel = "ID", description = "which of several meters in a log")
  private @Nullable String meter;

  @Option(names = "--list-causes", description = "lists the causes known, one a line")
  private boolean listCauses;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text (default), json or html, with charts of the log")
  private Format format = Format.TEXT;

  @Option(names = "--out", paramLabel = "FILE", description = "writes the diagnosis to this file")
  private @Nullable Path out;

  @Mixin private OutputOptions outputs = new OutputOptions();

  DiagnoseCommand(Console console) {
    this.console = console;
  }

  /** How the result is written. */
  enum Format {
    TEXT,
    JSON,
    HTML
  }

  @Override
  public Integer call() {
    if (listCauses) {
      console.out().print(DiagnosisReport.causes());
      return Exit.READY;
    }
    if (logs.isEmpty() && observed.isBlank() && file == null) {
      throw Refusal.wrongUse("give --log METER.csv, --observed \"...\", or a setup FILE");
    }
    Outputs writer = outputs.writer(console, inputs(), out);
    Optional<SetupReading.Read> setup = Optional.ofNullable(file).map(this::setup);
    List<String> skipped = new ArrayList<>();
    Diagnosis diagnosis =
        Diagnosis.of(setup.map(SetupReading.Read::setup), log(skipped), words(observed));
    String text =
        written(
            setup,
            new DiagnosisReport(
                setup.map(SetupReading.Read::name).orElse(""),
                setup.flatMap(read -> read.setup().site().reference().optional()),
                diagnosis,
                skipped,
                setup.map(read -> findings(read.setup())).orElse(List.of())));
    if (out != null) {
      if (!writer.write(out, to -> to.append(text))) {
        return Exit.UNWRITABLE;
      }
    } else {
      console.out().print(text);
    }
    return diagnosis
        .healthy()
        .map(healthy -> healthy ? Exit.READY : Exit.VERDICT)
        .orElse(Exit.NOTHING_CHECKED);
  }

  private SetupReading.Read setup(String name) {
    SetupReading reading =
        name.equals(SetupInput.STANDARD_INPUT)
            ? SetupReading.ofStream("standard input", console.in())
            : SetupReading.ofFile(Path.of(name));
    if (reading instanceof SetupReading.Unreadable unreadable) {
      throw Refusal.unreadable(unreadable.problems());
    }
    return (SetupReading.Read) reading;
  }

  /** What was said, with what the vocabulary of pasted text understands of it. */
  private static ObservedWords words(String said) {
    ObservedWords words = ObservedWords.of(said);
    String lines = "Observed:\n" + said.replaceAll("[,;]", "\n");
    return !said.isBlank()
            && SetupReading.ofText("--observed", lines) instanceof SetupReading.Read read
        ? words.completedBy(ObservedWords.of(read.setup().observed()))
        : words;
  }

  private Optional<MeterLog> log(List<String> skipped) {
    LogOptions options = new LogOptions(meanings(), Optional.ofNullable(meter));
    MeterLog all = null;
    for (Path path : logs) {
      LogReading reading = LogReading.ofFile(path, options);
      if (reading instanceof LogReading.Unreadable unreadable) {
        throw Refusal.unreadable(unreadable.problems());
      }
      LogReading.Read read = (LogReading.Read) reading;
      read.skipped().forEach(what -> skipped.add(read.name() + ": " + what));
      all = all == null ? read.log() : all.with(read.log());
    }
    return Optional.ofNullable(all);
  }

  private Map<String, Meaning> meanings() {
    Map<String, Meaning> meanings = new LinkedHashMap<>();
    columns.forEach((name, word) -> meanings.put(name, meaning(word)));
    return meanings;
  }

  private static Meaning meaning(String word) {
    return Arrays.stream(Meaning.values())
        .filter(meaning -> meaning.word().equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                Refusal.wrongUse(
                    "--column "
                        + word
                        + ": one of "
                        + Arrays.stream(Meaning.values())
                            .map(Meaning::word)
                            .collect(Collectors.joining(", "))));
  }

  /** What the rule book finds in the settings as proposed, with the remedies tried. */
  private List<Finding> findings(Setup setup) {
    Judge judge = judging.judge(judging.dayRuns(), console);
    return judge.judge(setup, judging.limits(), judging.date()).findings();
  }

  /** Start and stop of the relay in force, where entered. */
  private static List<Double> band(Optional<SetupReading.Read> setup) {
    return setup
        .map(read -> read.setup().asItWasFound().relay())
        .map(
            relay ->
                Stream.of(relay.start_kW(), relay.stop_kW())
                    .flatMap(kW -> kW.optional().stream())
                    .toList())
        .orElse(List.of());
  }

  private List<Path> inputs() {
    List<Path> inputs = new ArrayList<>(logs);
    if (file != null && !file.equals(SetupInput.STANDARD_INPUT)) {
      inputs.add(Path.of(file));
    }
    return inputs;
  }

  private String written(Optional<SetupReading.Read> setup, DiagnosisReport report) {
    Layout layout = console.layout(Console.Colour.NEVER);
    return switch (format) {
      case HTML -> report.html(Version.number(), band(setup));
      case JSON -> report.json(Version.number()) + "\n";
      case TEXT ->
          setup
                  .flatMap(SetupReading.Read::paste)
                  .map(paste -> PasteText.of(report.file(), paste, layout) + "\n")
                  .orElse("")
              + report.text(layout);
    };
  }
}
