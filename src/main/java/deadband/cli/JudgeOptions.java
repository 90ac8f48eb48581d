package deadband.cli;

import deadband.days.DayRuns;
import deadband.days.YearRuns;
import deadband.judging.HouseRules;
import deadband.judging.Judge;
import deadband.judging.RuleBook;
import deadband.limits.Limits;
import deadband.reading.LimitsReading;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What every command that judges is judged by: limits, date, example days and house rules. */
final class JudgeOptions {

  private static final String NO_COMPILER =
      "house rules need the rule compiler in lib/house, and it is missing: unpack the whole folder"
          + " again";

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = "date at which acceptances must be in force (default today)")
  private @Nullable LocalDate asOf;

  @Option(
      names = "--limits",
      paramLabel = "FILE",
      description = "limits of this site, in place of those of the rule book")
  private @Nullable Path limitsFile;

  @Option(
      names = "--no-day-run",
      description = "skips the example days; checks that need them are not judged")
  private boolean noDayRun;

  @Option(
      names = "--rules",
      paramLabel = "DIR",
      description = "house rules: DRL files judged next to the built-in rules; they are code")
  private @Nullable Path rulesFolder;

  LocalDate date() {
    return asOf == null ? LocalDate.now(ZoneId.systemDefault()) : asOf;
  }

  /** The limits in force. */
  Limits limits() {
    LimitsReading limits =
        limitsFile == null ? LimitsReading.none() : LimitsReading.ofFile(limitsFile);
    if (limits instanceof LimitsReading.Unreadable unreadable) {
      throw Refusal.unreadable(unreadable.problems());
    }
    return ((LimitsReading.Read) limits).limits();
  }

  DayRuns dayRuns() {
    return noDayRun ? DayRuns.none() : DayRuns.remembered();
  }

  Judge judge(DayRuns runs, Console console) {
    warn(console);
    return judge(runs);
  }

  /** What has to be said before house rules are run. */
  void warn(Console console) {
    if (rulesFolder != null) {
      console.tell(
          "house rules are code and run with your rights; use only those you trust: "
              + rulesFolder);
    }
  }

  Judge judge(DayRuns runs) {
    return noDayRun ? withoutYears(runs) : new Judge(book(), runs, YearRuns.remembered());
  }

  /** A judge that weighs no remedy by a year of days. */
  Judge withoutYears(DayRuns runs) {
    return new Judge(book(), runs);
  }

  private RuleBook book() {
    if (rulesFolder == null) {
      return RuleBook.builtIn();
    }
    if (!HouseRules.canBeCompiled()) {
      throw Refusal.incomplete(NO_COMPILER);
    }
    HouseRules house = HouseRules.in(rulesFolder);
    if (house instanceof HouseRules.Unreadable unreadable) {
      throw Refusal.unreadable(unreadable.problems());
    }
    return ((HouseRules.Read) house).book();
  }

  /** Whether no example days are to be run. */
  boolean skipsDays() {
    return noDayRun;
  }

  /** The files that are read for them. */
  List<Path> files() {
    return limitsFile == null ? List.of() : List.of(limitsFile);
  }
}
