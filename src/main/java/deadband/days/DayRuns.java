package deadband.days;

import deadband.dayrun.TestDays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

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

  /** Runs each model's days once and remembers what they came to. For any number of threads. */
  static DayRuns remembered() {
    return new Remembered();
  }

  /** The last models run; most changes that are tried leave the model as it is. */
  final class Remembered implements DayRuns {

    private static final int MOST = 4096;

    private final Map<DayModel, CompletableFuture<TestDays>> last =
        new LinkedHashMap<>(16, 0.75f, true) {
          private static final long serialVersionUID = 1;

          @Override
          protected boolean removeEldestEntry(
              Map.Entry<DayModel, CompletableFuture<TestDays>> eldest) {
            return size() > MOST;
          }
        };

    private Remembered() {}

    @Override
    public Optional<TestDays> of(DayModel model) {
      CompletableFuture<TestDays> mine = new CompletableFuture<>();
      CompletableFuture<TestDays> known;
      synchronized (last) {
        known = last.putIfAbsent(model, mine);
      }
      if (known == null) {
        run(model, mine);
        return Optional.of(mine.join());
      }
      return Optional.of(known.join());
    }

    private static void run(DayModel model, CompletableFuture<TestDays> into) {
      try {
        into.complete(TestDays.of(model.installation(), model.surroundings(), model.cycle()));
      } catch (RuntimeException | Error e) {
        into.completeExceptionally(e);
      }
    }
  }
}
