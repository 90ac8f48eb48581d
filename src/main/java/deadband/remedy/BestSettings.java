package deadband.remedy;

import deadband.dayrun.Day;
import deadband.dayrun.DayRun;
import deadband.dayrun.Result;
import deadband.dayrun.StepLength;
import deadband.days.DayModel;
import deadband.days.YearRuns;
import deadband.document.Pointer;
import deadband.judging.Finding;
import deadband.judging.Judge;
import deadband.judging.Trials;
import deadband.limits.Limits;
import deadband.setup.Change;
import deadband.setup.Setup;
import java.time.LocalDate;
import java.time.Year;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/**
 * Looks among settings for those that keep most heat from PV with fewest starts and least import,
 * over a year run minute by minute.
 *
 * <p>From the setup as it is, and from its proposal, it goes value by value and step by step of the
 * dial to settings around those on the front, and on from there. What no remedy may do no set may
 * do, and none may lower hygiene or leave a hazard that cannot be judged. The order is fixed and
 * the years are run side by side, so that the same setup gives the same front on any machine.
 */
public final class BestSettings {

  /** The year that is run; built-in days do not depend on today. */
  private static final Year YEAR = Year.of(2026);

  /** Colder draw-off than before that still counts as none [L in a year]: our own choice. */
  private static final double NOTICED_L = 10;

  private static final int MOST_ROWS = 8;

  private final Judge judge;
  private final Limits limits;
  private final LocalDate asOf;
  private final List<Pointer> kept;
  private final int most;

  /**
   * A search.
   *
   * @param kept values, or sections of them, that are not to be turned
   * @param most sets of settings it may look at
   */
  public BestSettings(Judge judge, Limits limits, LocalDate asOf, List<Pointer> kept, int most) {
    this.judge = judge;
    this.limits = limits;
    this.asOf = asOf;
    this.kept = List.copyOf(kept);
    this.most = most;
  }

  /** Is told how far a search is. */
  @FunctionalInterface
  public interface Progress {
    /**
     * So many sets looked at.
     *
     * @param front how many of them stand on the front
     */
    void at(int looked, int most, int front);
  }

  /**
   * What a search came to.
   *
   * @param asItIs the setup itself
   * @param front options that no other beats, most heat from PV first
   * @param barredBy checks of hazards that could not be judged, for which nothing is offered
   * @param looked sets of settings looked at
   * @param stopped whether it was stopped before its end
   */
  public record Front(
      Option asItIs, List<Option> front, List<String> barredBy, int looked, boolean stopped) {

    /** Both ends and an even choice between: the rows that are shown. */
    public List<Option> rows() {
      if (front.size() <= MOST_ROWS) {
        return front;
      }
      List<Option> rows = new ArrayList<>();
      for (int row = 0; row < MOST_ROWS; row++) {
        rows.add(front.get(row * (front.size() - 1) / (MOST_ROWS - 1)));
      }
      return rows;
    }
  }

  /**
   * Searches from a setup and from the changes proposed for it; empty where its days cannot be run.
   *
   * @param progress told of each set, from any thread
   * @param stop asked before each set, and in each day of its year, whether to end with what there
   *     is
   */
  public Optional<Front> from(
      Setup setup, List<Change> proposed, Progress progress, BooleanSupplier stop) {
    return DayModel.of(setup).isKnown()
        ? new Search(setup, stop).run(proposed, progress)
        : Optional.empty();
  }

  /** A year of one set of settings. */
  private record YearRun(Option option, Result result) {}

  /** The search from one setup. */
  private final class Search {

    private final Setup setup;
    private final BooleanSupplier stop;
    private final List<Day> days;
    private final Trials trials;
    private final Set<Map<Pointer, Object>> seen = new HashSet<>();
    private final Set<Option> expanded = new HashSet<>();
    private final List<Option> front = new ArrayList<>();
    private int looked;

    Search(Setup setup, BooleanSupplier stop) {
      this.setup = setup;
      this.stop = stop;
      this.days = DayModel.of(setup).get().surroundings().year(YEAR).toList();
      this.trials = judge.trials(setup, limits);
    }

    /** Empty where it is stopped before the year of the setup itself is through. */
    Optional<Front> run(List<Change> proposed, Progress progress) {
      Optional<YearRun> asItIs = year(List.of());
      if (asItIs.isEmpty()) {
        return Optional.empty();
      }
      Option first = asItIs.get().option();
      Result hygiene = asItIs.get().result();
      List<String> barredBy = trials.hazardsOpen();
      seen.add(Map.of());
      if (barredBy.isEmpty() && isSound(List.of())) {
        front.add(first);
      }
      List<List<Change>> next = barredBy.isEmpty() ? List.of(List.of(), proposed) : List.of();
      while (!next.isEmpty() && looked < most && !stop.getAsBoolean()) {
        round(next, hygiene, progress);
        next = front.stream().filter(expanded::add).map(Option::changes).toList();
      }
      return Optional.of(
          new Front(first, List.copyOf(front), barredBy, looked, stop.getAsBoolean()));
    }

    /** Looks at each of these and around it, side by side. */
    private void round(List<List<Change>> around, Result asItIs, Progress progress) {
      List<List<Change>> sets =
          around.stream()
              .flatMap(changes -> Stream.concat(Stream.of(changes), neighbours(changes)))
              .filter(changes -> seen.add(key(changes)))
              .limit(most - looked)
              .toList();
      int before = looked;
      int standing = front.size();
      AtomicInteger done = new AtomicInteger();
      looked += sets.size();
      sets.parallelStream()
          .peek(changes -> progress.at(before + done.incrementAndGet(), most, standing))
          .filter(changes -> !stop.getAsBoolean() && isSound(changes))
          .flatMap(changes -> year(changes).stream())
          .filter(year -> isAsClean(year.result(), asItIs))
          .map(YearRun::option)
          .toList()
          .forEach(this::enter);
      front.sort(Comparator.comparing(option -> -option.solarHeat_kWh()));
    }

    private Stream<List<Change>> neighbours(List<Change> from) {
      Setup now = Change.all(from, setup);
      return Stream.of(Tuning.values())
          .flatMap(tuning -> tuning.around(now).stream())
          .filter(change -> kept.stream().noneMatch(change.pointer()::startsWith))
          .map(change -> with(from, change));
    }

    private List<Change> with(List<Change> from, Change change) {
      Map<Pointer, Change> byPointer = new TreeMap<>();
      from.forEach(other -> byPointer.put(other.pointer(), other));
      Change own =
          new Change(change.pointer(), Change.entered(setup, change.pointer()), change.to());
      byPointer.put(own.pointer(), own);
      byPointer.values().removeIf(other -> other.to().equals(other.from()));
      return List.copyOf(byPointer.values());
    }

    private Map<Pointer, Object> key(List<Change> changes) {
      Map<Pointer, Object> key = new LinkedHashMap<>();
      changes.forEach(change -> key.put(change.pointer(), change.to()));
      return key;
    }

    /** Whether nothing is found but queries that were there before, none of them larger. */
    private boolean isSound(List<Change> changes) {
      boolean held =
          changes.isEmpty()
              || trials
                  .proof(changes, false)
                  .filter(proof -> proof.raises().isEmpty() && proof.enlarges().isEmpty())
                  .filter(proof -> proof.opens().isEmpty() && proof.hazardsOpen().isEmpty())
                  .isPresent();
      return held
          && judge.glance(Change.all(changes, setup), limits, asOf).findings().stream()
              .filter(Finding::isOpen)
              .noneMatch(finding -> finding.consequence().blocksSignOff());
    }

    /** Hygiene is not lower than it is now, nor is more water drawn cold. */
    private boolean isAsClean(Result year, Result asItIs) {
      return year.minutes20to45() <= asItIs.minutes20to45()
          && year.logReductionTop() >= asItIs.logReductionTop()
          && year.logReductionBottom() >= asItIs.logReductionBottom()
          && year.coldDraw_L() <= asItIs.coldDraw_L() + NOTICED_L;
    }

    /** A year with these changes; empty where it is stopped in one. */
    private Optional<YearRun> year(List<Change> changes) {
      DayModel model = DayModel.of(Change.all(changes, setup)).get();
      DayRun run =
          DayRun.of(
              model.installation().with(model.cycle().firstDue(YearRuns.CYCLES_BEGIN_MIN)),
              StepLength.MINUTE);
      for (Day day : days) {
        if (stop.getAsBoolean()) {
          return Optional.empty();
        }
        run.through(day);
      }
      Result year = run.result();
      return Optional.of(
          new YearRun(
              new Option(
                  changes,
                  Math.rint(year.solarHeat_kWh()),
                  year.cycles().map(Result.Cycles::heatPumpStarts).orElse(0),
                  Math.rint(year.import_kWh())),
              year));
    }

    private void enter(Option option) {
      if (front.stream().noneMatch(option::isBeatenBy)) {
        front.removeIf(other -> other.isBeatenBy(option));
        front.add(option);
      }
    }
  }
}
