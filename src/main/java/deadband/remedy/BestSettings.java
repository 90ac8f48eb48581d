package deadband.remedy;

import deadband.cases.DayModel;
import deadband.cases.Derived;
import deadband.cases.Limits;
import deadband.dayrun.Day;
import deadband.dayrun.DayRun;
import deadband.dayrun.Result;
import deadband.dayrun.StepLength;
import deadband.document.Pointer;
import deadband.judging.Finding;
import deadband.judging.Judge;
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
 * Looks among settings without a finding for those that keep most heat from the sun with fewest
 * starts and least bought, over a year run minute by minute.
 *
 * <p>From the setup it goes, value by value and step by step of the dial, to settings around those
 * on the front, and on from there. The order is fixed and the years are run side by side, so that
 * the same setup gives the same front on any machine.
 */
public final class BestSettings {

  /** The year that is run; built-in days do not depend on today. */
  private static final Year YEAR = Year.of(2026);

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
   * @param front options that no other beats, most heat from the sun first
   * @param looked sets of settings looked at
   * @param stopped whether it was stopped before its end
   */
  public record Front(Option asItIs, List<Option> front, int looked, boolean stopped) {}

  /**
   * Searches from a setup; empty where its days cannot be run.
   *
   * @param progress told of each set, from any thread
   * @param stop asked before each set whether to end with what there is
   */
  public Optional<Front> from(Setup setup, Progress progress, BooleanSupplier stop) {
    return DayModel.of(setup).isKnown()
        ? Optional.of(new Search(setup).run(progress, stop))
        : Optional.empty();
  }

  /** The search from one setup. */
  private final class Search {

    private final Setup setup;
    private final List<Day> days;
    private final Set<Map<Pointer, Object>> seen = new HashSet<>();
    private final Set<Option> expanded = new HashSet<>();
    private List<Option> front = new ArrayList<>();
    private int looked;

    Search(Setup setup) {
      this.setup = setup;
      this.days = DayModel.of(setup).get().surroundings().year(YEAR).toList();
    }

    Front run(Progress progress, BooleanSupplier stop) {
      Option asItIs = option(List.of());
      seen.add(Map.of());
      boolean sound = isSound(setup);
      if (sound) {
        front.add(asItIs);
      }
      List<Option> next = List.of(asItIs);
      while (!next.isEmpty() && looked < most && !stop.getAsBoolean()) {
        round(next, progress, stop);
        next = front.stream().filter(expanded::add).toList();
      }
      return new Front(asItIs, List.copyOf(front), looked, stop.getAsBoolean());
    }

    /** Looks around each of these, side by side. */
    private void round(List<Option> around, Progress progress, BooleanSupplier stop) {
      List<List<Change>> sets =
          around.stream()
              .flatMap(option -> neighbours(option.changes()))
              .filter(changes -> seen.add(key(changes)))
              .limit(most - looked)
              .toList();
      int before = looked;
      int standing = front.size();
      AtomicInteger done = new AtomicInteger();
      looked += sets.size();
      sets.parallelStream()
          .peek(changes -> progress.at(before + done.incrementAndGet(), most, standing))
          .filter(changes -> !stop.getAsBoolean() && isSound(Change.all(changes, setup)))
          .map(this::option)
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
      Change own = new Change(change.pointer(), Change.told(setup, change.pointer()), change.to());
      byPointer.put(own.pointer(), own);
      byPointer.values().removeIf(other -> other.to().equals(other.from()));
      return List.copyOf(byPointer.values());
    }

    private Map<Pointer, Object> key(List<Change> changes) {
      Map<Pointer, Object> key = new LinkedHashMap<>();
      changes.forEach(change -> key.put(change.pointer(), change.to()));
      return key;
    }

    /** Whether nothing is found that is not accepted. */
    private boolean isSound(Setup changed) {
      return judge.glance(changed, limits, asOf).findings().stream().noneMatch(Finding::isOpen);
    }

    private Option option(List<Change> changes) {
      Derived<DayModel> model = DayModel.of(Change.all(changes, setup));
      DayRun run = DayRun.of(model.get().installation(), StepLength.MINUTE);
      days.forEach(run::through);
      Result year = run.result();
      return new Option(
          changes,
          Math.rint(year.solarHeat_kWh()),
          year.cycles().map(Result.Cycles::heatPumpStarts).orElse(0),
          Math.rint(year.import_kWh()));
    }

    private void enter(Option option) {
      if (front.stream().noneMatch(option::isBeatenBy)) {
        front.removeIf(other -> other.isBeatenBy(option));
        front.add(option);
      }
    }
  }
}
