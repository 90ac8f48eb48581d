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
import deadband.meterlog.Meaning;
import deadband.provenance.Derived;
import deadband.reading.Gaps;
import deadband.reading.LogOptions;
import deadband.reading.LogReading;
import deadband.reading.MeterDay;
import deadband.reading.ProfileReading;
import deadband.reading.SetupReading;
import deadband.report.DayChart;
import deadband.report.DayReport;
import deadband.report.JobRecord;
import deadband.report.TraceCsv;
import deadband.report.YearChart;
import deadband.setup.Relay;
import deadband.setup.Setup;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Simulates a day, or a year, with the settings of one setup. */
@Command(
    name = "simulate",
    description = "Simulates a day or a year with the settings, minute by minute.",
    mixinStandardHelpOptions = true)
final class SimulateCommand implements Callable<Integer> {

  private static final int SECONDS_PER_MINUTE = 60;

  private final Console console;

  @Mixin private SetupInput input = new SetupInput();
  @Mixin private OutputOptions outputs = new OutputOptions();

  @Option(
      names = "--day",
      paramLabel = "DAY",
      defaultValue = "clear",
      description =
          "clear (default), cloud, winter, year, or a CSV with time and any of pv_kW, house_kW,"
              + " surplus_kW, draw_L, or a meter log with the grid's power")
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
      description = "fills gaps of a CSV up to this long with the value before them")
  private @Nullable Integer fill_min;

  @Option(names = "--trace", paramLabel = "CSV", description = "writes every step to this file")
  private @Nullable Path trace;

  @Option(
      names = "--chart",
      paramLabel = "SVG",
      description = "draws the day, or the months of the year, into this file")
  private @Nullable Path chart;

  @Option(
      names = "--beside",
      paramLabel = "DAY",
      description = "charts this day, too, beside the other on the same scales")
  private @Nullable String beside;

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

  @Override
  public Integer call() {
    StepLength step = stepLength();
    if (beside != null && (chart == null || isYear(day) || isYear(beside))) {
      throw Refusal.wrongUse("--beside charts a second day beside the first: name a --chart");
    }
    List<Path> inputs = new ArrayList<>(input.files());
    Stream.of(day, beside == null ? day : beside)
        .filter(SimulateCommand::isFile)
        .forEach(file -> inputs.add(Path.of(file)));
    Outputs writer = outputs.writer(console, inputs, trace, chart);
    SetupReading.Read read = input.told(console);
    Derived<DayModel> model = DayModel.of(read.setup());
    if (!callsHeatPump(read.setup()) || !model.isKnown()) {
      throw Refusal.nothing(read.document().name() + " cannot be simulated: " + why(read, model));
    }
    Programme programme = programme(day, model.get().surroundings(), read.setup());
    return run(read, model, step, programme, writer);
  }

  private static boolean isYear(String day) {
    return day.equals(Programme.YEAR);
  }

  private StepLength stepLength() {
    long seconds = Math.round(step_min * SECONDS_PER_MINUTE);
    if (seconds < 1 || 3600 % seconds != 0) {
      throw Refusal.wrongUse(
          "--step " + step_min + ": a step is whole seconds that divide an hour");
    }
    return new StepLength((int) seconds);
  }

  private static boolean callsHeatPump(Setup setup) {
    return !setup.relay().drives().isEntered()
        || setup.relay().drives().says(Relay.Drives.HEAT_PUMP);
  }

  private static String why(SetupReading.Read read, Derived<DayModel> model) {
    return callsHeatPump(read.setup())
        ? "missing are "
            + model.provenance().missing().stream()
                .map(Pointer::dotted)
                .collect(Collectors.joining(", "))
        : "a relay that calls the heat pump is needed, and relay.drives says something else";
  }

  private static boolean isFile(String day) {
    return day.toLowerCase(Locale.ROOT).endsWith(".csv");
  }

  private Programme programme(String day, Surroundings surroundings, Setup setup) {
    if (!isFile(day)) {
      return Programme.builtIn(day, date, surroundings)
          .orElseThrow(
              () ->
                  Refusal.wrongUse(
                      "--day "
                          + day
                          + ": none of clear, cloud, winter, year, or a file ending .csv"));
    }
    Gaps gaps = fill_min == null ? Gaps.refused() : Gaps.filledUpTo(Math.max(0, fill_min));
    ProfileReading csv = reading(day, gaps, setup);
    if (csv instanceof ProfileReading.Unreadable unreadable) {
      throw Refusal.unreadable(unreadable.problems());
    }
    ProfileReading.Read profile = (ProfileReading.Read) csv;
    if (profile.filled() > 0) {
      console.tell(profile.name() + ": " + profile.filled() + " missing steps filled");
    }
    return Programme.of(profile, date, surroundings);
  }

  /** A day file, or a meter log, of which what the simulation adds itself is taken out. */
  private ProfileReading reading(String day, Gaps gaps, Setup setup) {
    Path path = Path.of(day);
    ProfileReading csv = ProfileReading.ofFile(path, gaps);
    if (csv instanceof ProfileReading.Read) {
      return csv;
    }
    LogReading log = LogReading.ofFile(path, LogOptions.none());
    if (!(log instanceof LogReading.Read read) || !MeterDay.isShown(log)) {
      return csv;
    }
    console.tell(read.name() + ": " + MeterDay.says(read));
    return MeterDay.of(read, metered(setup), gaps);
  }

  /** What the grid's power holds in this home, so that it must be known to be taken out. */
  private static Set<Meaning> metered(Setup setup) {
    Set<Meaning> metered = EnumSet.of(Meaning.HEAT_PUMP);
    if (!setup.immersion().part().isFitted().says(false)) {
      metered.add(Meaning.IMMERSION);
    }
    if (setup.vehicleCharger().part().isFitted().says(true)) {
      metered.add(Meaning.VEHICLE);
    }
    if (setup.battery().part().isFitted().says(true)) {
      metered.add(Meaning.BATTERY);
    }
    return metered;
  }

  private int run(
      SetupReading.Read read,
      Derived<DayModel> model,
      StepLength step,
      Programme programme,
      Outputs writer) {
    boolean months = chart != null && isYear(day);
    boolean watched = trace != null || (chart != null && !months);
    Recording recording = Recording.of(step, watched ? programme.steps(step) : 0);
    DayRun run = DayRun.of(installation(model.get(), programme), step);
    if (watched) {
      run.watchedBy(recording);
    }
    List<Result> ends = through(run, programme);
    boolean written =
        writer.write(trace, out -> TraceCsv.write(recording, out))
            && writer.write(
                chart,
                out ->
                    out.append(
                        months
                            ? YearChart.of(
                                ends,
                                programme.date(),
                                job(read) + ", year " + programme.date().getYear())
                            : days(read, model.get(), step, programme, recording)));
    if (!written) {
      return Exit.UNWRITABLE;
    }
    print(report(read, model, step, programme, run.result()));
    return Exit.READY;
  }

  /** Runs the days; what the run had come to at the end of each month. */
  private List<Result> through(DayRun run, Programme programme) {
    List<Result> ends = new ArrayList<>();
    LocalDate date = programme.date();
    try {
      for (Day each : programme.days()) {
        run.through(each);
        date = date.plusDays(1);
        if (date.getDayOfMonth() == 1) {
          ends.add(run.result());
        }
      }
    } catch (IllegalArgumentException unfit) {
      throw Refusal.wrongUse("--step " + step_min + ": " + unfit.getMessage());
    }
    return ends;
  }

  private String days(
      SetupReading.Read read,
      DayModel model,
      StepLength step,
      Programme programme,
      Recording recording) {
    DayChart.Markings markings = markings(read, model, programme, "day");
    if (beside == null) {
      return DayChart.of(recording, markings, DayChart.Size.PAGE);
    }
    Programme second = programme(beside, model.surroundings(), read.setup());
    Recording other = Recording.of(step, second.steps(step));
    through(DayRun.of(model.installation(), step).watchedBy(other), second);
    return DayChart.of(recording, markings, other, markings(read, model, second, "beside"));
  }

  private static Installation installation(DayModel model, Programme programme) {
    return programme.disinfects()
        ? model.installation().with(model.cycle().firstDue(YearRuns.CYCLES_BEGIN_MIN))
        : model.installation();
  }

  private static DayChart.Markings markings(
      SetupReading.Read read, DayModel model, Programme programme, String id) {
    boolean surplusOnly = programme.days().get(0).profile().surplusGiven();
    return DayChart.Markings.of(read.setup(), model, id, title(read, programme), surplusOnly);
  }

  /** Job, day and date; of files the names without their folders. */
  private static String title(SetupReading.Read read, Programme programme) {
    return job(read) + ", " + JobRecord.fileName(programme.name()) + ", " + programme.date();
  }

  private static String job(SetupReading.Read read) {
    String file = JobRecord.fileName(read.document().name());
    return read.setup().site().reference().optional().orElse(file);
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
}
