package deadband.days;

import deadband.dayrun.CycleRun;
import deadband.dayrun.DisinfectionModel.Heater;
import deadband.dayrun.TestDays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;

/** Where the days come from on which setups are judged. */
public interface DayRuns {

  /** What the days of a model come to; empty where day runs are left out. */
  Optional<TestDays> of(DayModel model);

  /** Leaves them out: what only a day run can tell is then not judged. */
  static DayRuns none() {
    return LeftOut.ONE;
  }

  /** No day is run, so that no model need be made for it. */
  enum LeftOut implements DayRuns {
    ONE;

    @Override
    public Optional<TestDays> of(DayModel model) {
      return Optional.empty();
    }
  }

  /**
   * Runs what each model asks for once and remembers what it came to: the disinfection cycle again
   * where anything of the model changed, the other days where more than its programme did. For any
   * number of threads.
   */
  static DayRuns remembered() {
    return new Remembered();
  }

  /** The last models run; most changes that are tried leave the model as it is. */
  final class Remembered implements DayRuns {

    private final Once<TestDays> days = new Once<>();
    private final Once<CycleRun> cycles = new Once<>();

    private Remembered() {}

    @Override
    public Optional<TestDays> of(DayModel model) {
      TestDays ran =
          days.of(
              model.withoutCycle(), each -> TestDays.of(each.installation(), each.surroundings()));
      return Optional.of(
          model.cycle().heater() == Heater.NONE ? ran : ran.with(cycles.of(model, this::cycle)));
    }

    private CycleRun cycle(DayModel model) {
      return CycleRun.of(model.installation(), model.surroundings(), model.cycle());
    }

    /** Something of the last models, run once; who asks meanwhile waits for it. */
    private static final class Once<T> {

      private static final int MOST = 4096;

      private final Map<DayModel, CompletableFuture<T>> last =
          new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<DayModel, CompletableFuture<T>> eldest) {
              return size() > MOST;
            }
          };

      private T of(DayModel model, Function<DayModel, T> run) {
        CompletableFuture<T> mine = new CompletableFuture<>();
        CompletableFuture<T> known;
        synchronized (last) {
          known = last.putIfAbsent(model, mine);
        }
        if (known != null) {
          return known.join();
        }
        try {
          mine.complete(run.apply(model));
        } catch (RuntimeException | Error e) {
          mine.completeExceptionally(e);
        }
        return mine.join();
      }
    }
  }
}
