package deadband.cli;

import deadband.dayrun.Day;
import deadband.dayrun.DayRun;
import deadband.dayrun.Installation;
import deadband.dayrun.Recording;
import deadband.dayrun.Result;
import deadband.dayrun.StepLength;
import deadband.dayrun.Surroundings;
import deadband.days.DayModel;
import deadband.days.YearRuns;
import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.document.ProblemText;
import deadband.provenance.Derived;
import deadband.reading.Gaps;
import deadband.reading.ProfileReading;
import deadband.reading.SetupReading;
import deadband.report.DayChart;
import deadband.report.DayReport;
import deadband.report.TraceCsv;
import deadband.setup.Relay;
import deadband.setup.Setup;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Year;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs the settings of one setup through a day, or a year. */
@Command(
    name = "simulate",
    description = "Runs the settings through a day or a year, minute by minute.",
    mixinStandardHelpOptions = true)
final class SimulateCommand implements Callable<Integer> {

  private static final String STANDARD_INPUT = "-";
  private static final String YEAR = "year";
  private static final int SECONDS_PER_MINUTE = 60;

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
      names = "--day",
      paramLabel = "DAY",
      defaultValue = "clear",
      description =
          "clear (default), cloud, winter, year, or a CSV with time and any of pv_kW, house_kW,"
              + " surplus_kW, draw_L")
  private String day = "clear";

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "date of the day; of a year, any day in it (default fixed, not today)")
  private @Nullable LocalDate date;

  @Option(
      names = "--step",
      paramLabel = "MIN",
      defaultValue = "1",
      description = "length of a step in minutes, such as 1 (default), 0.5 or 5")
  private double step_min = 1;

  @Option(
      names = "--fill-gaps",
      paramLabel = "MIN",
      description = "fills gaps of a CSV up to this long with what stood before them")
  private @Nullable Integer fill_min;

  @Option(names = "--trace", paramLabel = "CSV", description = "writes every step to this file")
  private @Nullable Path trace;

  @Option(names = "--chart", paramLabel = "SVG", description = "draws the day into this file")
  private @Nullable Path chart;

  @Option(
      names = "--overwrite",
      description = "lets --trace and --chart replace a file that is there, but never an input")
  private boolean overwrite;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text (default) or json")
  private Format format = Format.TEXT;

  SimulateCommand(Console console) {
    this.console = console;
  }

  /** How the result is written. */
  enum Format {
    TEXT,
    JSON
  }

  /**
   * What is run.
   *
   * @param name what it is called in the report
   * @param date its day, or the first of its year
   * @param days one after the other
   * @param disinfects whether disinfection cycles fall due in it
   */
  private record Programme(String name, LocalDate date, List<Day> days, boolean disinfects) {

    int steps(StepLength step) {
      int seconds =
          days.stream()
              .mapToInt(day -> day.profile().length() * day.profile().step().seconds())
              .sum();
      return seconds / step.seconds();
    }
  }

  @Override
  public Integer call() {
    StepLength step = stepLength();
    if (chart != null && day.equals(YEAR)) {
      throw wrong("--chart draws one day; a year is too long for it");
    }
    outputs()
        .refusal(Stream.of(trace, chart).filter(Objects::nonNull).toList())
        .ifPresent(
            refusal -> {
              throw wrong(refusal);
            });
    SetupReading reading =
        file.equals(STANDARD_INPUT)
            ? SetupReading.ofStream(name, console.in())
            : SetupReading.ofFile(Path.of(file));
    if (reading instanceof SetupReading.Unreadable unreadable) {
      return unreadable(unreadable.problems());
    }
    SetupReading.Read read = (SetupReading.Read) reading;
    Derived<DayModel> model = DayModel.of(read.setup());
    if (!callsHeatPump(read.setup()) || !model.isKnown()) {
      console.tell(cannotRun(read, model));
      return Exit.NOTHING_CHECKED;
    }
    return run(read, model, step);
  }

  private Outputs outputs() {
    List<Path> inputs = new ArrayList<>();
    if (!file.equals(STANDARD_INPUT)) {
      inputs.add(Path.of(file));
    }
    if (isGiven()) {
      inputs.add(Path.of(day));
    }
    return new Outputs(console, overwrite, inputs);
  }

  private StepLength stepLength() {
    long seconds = Math.round(step_min * SECONDS_PER_MINUTE);
    if (seconds < 1 || 3600 % seconds != 0) {
      throw wrong("--step " + step_min + ": a step is whole seconds that divide an hour");
    }
    return new StepLength((int) seconds);
  }

  private static boolean callsHeatPump(Setup setup) {
    return !setup.relay().drives().isTold() || setup.relay().drives().says(Relay.Drives.HEAT_PUMP);
  }

  private static String cannotRun(SetupReading.Read read, Derived<DayModel> model) {
    if (!callsHeatPump(read.setup())) {
      return read.document().name()
          + " cannot be run: the day run knows a relay that calls a heat pump, and this one does not";
    }
    return read.document().name()
        + " cannot be run: not told are "
        + model.provenance().missing().stream()
            .map(Pointer::dotted)
            .collect(Collectors.joining(", "));
  }

  private int run(SetupReading.Read read, Derived<DayModel> model, StepLength step) {
    Surroundings surroundings = model.get().surroundings();
    if (!isGiven()) {
      return run(read, model, step, builtIn(surroundings));
    }
    ProfileReading csv = ProfileReading.ofFile(Path.of(day), gaps());
    if (csv instanceof ProfileReading.Unreadable unreadable) {
      return unreadable(unreadable.problems());
    }
    return run(read, model, step, given((ProfileReading.Read) csv, surroundings));
  }

  private boolean isGiven() {
    return day.toLowerCase(Locale.ROOT).endsWith(".csv");
  }

  private Gaps gaps() {
    return fill_min == null ? Gaps.refused() : Gaps.filledUpTo(Math.max(0, fill_min));
  }

  private Programme builtIn(Surroundings surroundings) {
    LocalDate spring = date == null ? surroundings.springDate() : date;
    return switch (day) {
      case "clear" -> oneDay("clear day", spring, surroundings.clear(spring));
      case "cloud" -> oneDay("broken cloud", spring, surroundings.cloud(spring));
      case "winter" -> {
        LocalDate winter = date == null ? surroundings.winterDate() : date;
        yield oneDay("dull winter day", winter, surroundings.dull(winter));
      }
      case YEAR -> {
        Year year = Year.of(spring.getYear());
        yield new Programme(
            "a year of days", year.atDay(1), surroundings.year(year).toList(), true);
      }
      default ->
          throw wrong(
              "--day " + day + ": none of clear, cloud, winter, year, or a file ending .csv");
    };
  }

  private static Programme oneDay(String name, LocalDate date, Day day) {
    return new Programme(name, date, List.of(day), false);
  }

  /** A day file, with what it does not tell taken from the built-in household and a clear sky. */
  private Programme given(ProfileReading.Read csv, Surroundings surroundings) {
    LocalDate on = date == null ? surroundings.springDate() : date;
    Day clear = surroundings.clear(on);
    if (csv.filled() > 0) {
      console.tell(csv.name() + ": " + csv.filled() + " steps filled");
    }
    Day told = new Day(csv.completedBy(clear.profile()), clear.coldWater_C(), clear.source_C());
    return oneDay(csv.name(), on, told);
  }

  private int run(
      SetupReading.Read read, Derived<DayModel> model, StepLength step, Programme programme) {
    boolean watched = trace != null || chart != null;
    Recording recording = Recording.of(step, watched ? programme.steps(step) : 0);
    DayRun run = DayRun.of(installation(model.get(), programme), step);
    if (watched) {
      run.watchedBy(recording);
    }
    try {
      programme.days().forEach(run::through);
    } catch (IllegalArgumentException unfit) {
      throw wrong("--step " + step_min + ": " + unfit.getMessage());
    }
    if (!written(recording, read, model.get(), programme)) {
      return Exit.UNWRITABLE;
    }
    print(report(read, model, step, programme, run.result()));
    return Exit.READY;
  }

  private static Installation installation(DayModel model, Programme programme) {
    return programme.disinfects()
        ? model.installation().with(model.cycle().firstDue(YearRuns.CYCLES_BEGIN_MIN))
        : model.installation();
  }

  private boolean written(
      Recording recording, SetupReading.Read read, DayModel model, Programme programme) {
    Outputs outputs = outputs();
    return outputs.write(trace, out -> TraceCsv.write(recording, out))
        && outputs.write(
            chart,
            out ->
                out.append(
                    DayChart.of(recording, markings(read, model, programme), DayChart.Size.PAGE)));
  }

  private static DayChart.Markings markings(
      SetupReading.Read read, DayModel model, Programme programme) {
    Setup setup = read.setup();
    boolean heats = setup.diverter().limit_C().isTold();
    String job = setup.site().reference().optional().orElse(read.document().name());
    return new DayChart.Markings(
        "day",
        job + ", " + programme.name() + ", " + programme.date(),
        OptionalDouble.of(model.installation().relay().start_kW()),
        OptionalDouble.of(model.installation().relay().stop_kW()),
        heats
            ? OptionalDouble.of(model.installation().diverter().opening_C())
            : OptionalDouble.empty(),
        setup
            .blending()
            .hotSupplyMax_C()
            .optional()
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty()));
  }

  private static DayReport report(
      SetupReading.Read read,
      Derived<DayModel> model,
      StepLength step,
      Programme programme,
      Result result) {
    return new DayReport(
        read.document().name(),
        read.setup().site().reference().optional(),
        programme.name(),
        programme.date().toString(),
        step.minutes(),
        result,
        model.provenance().assumed());
  }

  private void print(DayReport report) {
    switch (format) {
      case JSON -> console.out().print(report.json(Version.number()) + "\n");
      case TEXT -> console.out().print(report.text(console.layout(Console.Colour.NEVER)));
    }
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
