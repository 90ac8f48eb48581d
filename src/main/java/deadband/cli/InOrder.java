package deadband.cli;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Works on many things on all cores, some of them side by side, and hands on what came of each in
 * the order in which they were given. No more than a bounded number of them, and of bytes, is held
 * at a time, however many there are in all.
 *
 * @param <I> a thing to work on
 * @param <T> what comes of it
 */
final class InOrder<I, T> implements AutoCloseable {

  private static final int MOST_FOR_EACH_CORE = 32;
  private static final long MOST_BYTES = 16L * 1024 * 1024;

  /** More gain little and hold more memory. */
  private static final int MOST_SIDE_BY_SIDE = 8;

  private static final long MOST_BYTES_SIDE_BY_SIDE = MOST_BYTES / 16;

  /** Work that goes on, on how many things, and their size. */
  private record Going<T>(Future<List<T>> work, int things, long bytes) {}

  private final int cores = Runtime.getRuntime().availableProcessors();
  private final ExecutorService workers = Executors.newFixedThreadPool(cores, InOrder::thread);
  private final Deque<Going<T>> going = new ArrayDeque<>();
  private final Function<List<I>, List<T>> work;
  private final Predicate<T> taken;
  private List<I> next = new ArrayList<>();
  private long nextBytes;
  private long begun;
  private int held;
  private long bytes;

  /**
   * A window of work.
   *
   * @param work makes of several things what comes of each
   * @param taken is given each result; says whether it takes more
   */
  InOrder(Function<List<I>, List<T>> work, Predicate<T> taken) {
    this.work = work;
    this.taken = taken;
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "worker");
    thread.setDaemon(true);
    return thread;
  }

  /** Where the work is done. */
  ExecutorService workers() {
    return workers;
  }

  /**
   * Takes a thing to work on, once there is room for it; whether more is wanted.
   *
   * @param size in bytes
   */
  boolean add(I thing, int size) {
    next.add(thing);
    nextBytes += size;
    boolean more = next.size() < sideBySide() && nextBytes < MOST_BYTES_SIDE_BY_SIDE;
    return more || begin();
  }

  /** Few at first, so that every core has something to do. */
  private long sideBySide() {
    return Math.min(MOST_SIDE_BY_SIDE, 1 + begun / ((long) MOST_SIDE_BY_SIDE * cores));
  }

  private boolean begin() {
    boolean wanted = true;
    while (wanted && isFull()) {
      wanted = handOn();
    }
    List<I> things = next;
    going.add(new Going<>(workers.submit(() -> work.apply(things)), things.size(), nextBytes));
    begun += things.size();
    held += things.size();
    bytes += nextBytes;
    next = new ArrayList<>();
    nextBytes = 0;
    return wanted;
  }

  private boolean isFull() {
    return held + next.size() > MOST_FOR_EACH_CORE * cores
        || (!going.isEmpty() && bytes + nextBytes > MOST_BYTES);
  }

  /** Hands on what is left. */
  boolean finish() {
    boolean wanted = next.isEmpty() || begin();
    while (wanted && !going.isEmpty()) {
      wanted = handOn();
    }
    return wanted;
  }

  private boolean handOn() {
    Going<T> first = going.remove();
    held -= first.things;
    bytes -= first.bytes;
    return result(first.work).stream().allMatch(taken);
  }

  /** The result, or what was thrown in its place. */
  private static <T> T result(Future<T> work) {
    try {
      return work.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    } catch (ExecutionException e) {
      throw unchecked(Objects.requireNonNullElse(e.getCause(), e));
    }
  }

  private static RuntimeException unchecked(Throwable thrown) {
    if (thrown instanceof CompletionException wrapped && wrapped.getCause() != null) {
      return unchecked(wrapped.getCause());
    }
    if (thrown instanceof Error error) {
      throw error;
    }
    return thrown instanceof RuntimeException fault ? fault : new IllegalStateException(thrown);
  }

  @Override
  public void close() {
    workers.shutdownNow();
  }
}
