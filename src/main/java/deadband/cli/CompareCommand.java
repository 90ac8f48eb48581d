package deadband.cli;

import deadband.days.YearEffect;
import deadband.days.YearRuns;
import deadband.judging.Judge;
import deadband.limits.Limits;
import deadband.reading.SetupReading;
import deadband.report.Comparison;
import deadband.report.Report;
import deadband.setup.Setup;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Compares two setups of a home, or one with its settings as found. */
@Command(
    name = "compare",
    description = "Compares two setups, or one with its settings as found; 1 where it got worse.",
    mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(
      arity = "1..2",
      paramLabel = "FILE",
      description = "setup before and setup after; of one alone, its asFound.settings are before")
  private List<Path> files = new ArrayList<>();

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text (default), json, markdown or html")
  private Format format = Format.TEXT;

  @Option(names = "--out", paramLabel = "FILE", description = "writes the comparison to this file")
  private @Nullable Path out;

  @Option(names = "--no-year", description = "leaves the years out, which take the longest")
  private boolean noYear;

  @Mixin private EquipmentOption equipment = new EquipmentOption();
  @Mixin private OutputOptions outputs = new OutputOptions();
  @Mixin private JudgeOptions judging = new JudgeOptions();

  CompareCommand(Console console) {
    this.console = console;
  }

  /** How a comparison is written. */
  enum Format {
    TEXT,
    JSON,
    MARKDOWN,
    HTML
  }

  @Override
  public Integer call() {
    List<Path> inputs = new ArrayList<>(judging.files());
    inputs.addAll(files);
    Outputs writer = outputs.writer(console, inputs, out);
    Limits limits = judging.limits();
    List<SetupReading.Read> read = files.stream().map(this::read).toList();
    SetupReading.Read last = read.get(read.size() - 1);
    Judge judge = judging.judge(judging.dayRuns(), console);
    Report after = report(last, last.setup(), judge, limits);
    Report before =
        read.size() == 2
            ? report(read.get(0), read.get(0).setup(), judge, limits)
            : report(last, asFound(last), judge, limits);
    YearRuns years = YearRuns.remembered();
    Comparison comparison =
        new Comparison(
            before,
            after,
            year(before.setup(), years),
            year(after.setup(), years),
            Version.number());
    return written(comparison, writer) ? exit(comparison) : Exit.UNWRITABLE;
  }

  private static int exit(Comparison comparison) {
    return comparison.isWorse() ? Exit.VERDICT : Exit.READY;
  }

  private SetupReading.Read read(Path file) {
    SetupReading reading = equipment.withSheets(SetupReading.ofFile(file), file);
    if (reading instanceof SetupReading.Unreadable unreadable) {
      throw Refusal.unreadable(unreadable.problems());
    }
    return (SetupReading.Read) reading;
  }

  private static Setup asFound(SetupReading.Read read) {
    if (!read.setup().asFound().settings().isEntered()) {
      throw Refusal.wrongUse(
          read.name() + " holds no asFound.settings to compare with: name two files");
    }
    return read.setup().asItWasFound();
  }

  private Report report(SetupReading.Read read, Setup setup, Judge judge, Limits limits) {
    LocalDate date = judging.date();
    return new Report(read.document(), setup, judge.glance(setup, limits, date));
  }

  private Optional<YearEffect> year(Setup setup, YearRuns years) {
    return noYear || judging.skipsDays() ? Optional.empty() : years.of(setup);
  }

  private boolean written(Comparison comparison, Outputs writer) {
    String text =
        switch (format) {
          case TEXT -> comparison.text(console.layout(Console.Colour.NEVER));
          case JSON -> comparison.json() + "\n";
          case MARKDOWN -> comparison.markdown();
          case HTML -> comparison.html();
        };
    if (out != null) {
      return writer.write(out, to -> to.append(text));
    }
    console.out().print(text);
    return true;
  }
}
