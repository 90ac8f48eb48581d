package deadband.cli;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Predicate;

/**
 * Works on many things on all cores and hands on what came of each in the order in which they were
 * given. No more than a bounded number of them, and of bytes, is held at a time, however many there
 * are in all.
 */
final class InOrder<T> implements AutoCloseable {

  private static final int MOST_FOR_EACH_CORE = 32;
  private static final long MOST_BYTES = 16L * 1024 * 1024;

  /** Work that goes on, and the size of what it is about. */
  private record Going<T>(Future<T> work, int bytes) {}

  private final int cores = Runtime.getRuntime().availableProcessors();
  private final ExecutorService workers = Executors.newFixedThreadPool(cores, InOrder::thread);
  private final Deque<Going<T>> going = new ArrayDeque<>();
  private final Predicate<T> taken;
  private long bytes;

  /**
   * A window of work.
   *
   * @param taken is given each result; says whether it takes more
   */
  InOrder(Predicate<T> taken) {
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
   * Begins a piece of work, once there is room for it; whether more is wanted.
   *
   * @param size of what it is about, in bytes
   */
  boolean add(int size, Callable<T> work) {
    boolean wanted = true;
    while (wanted && isFull(size)) {
      wanted = handOn();
    }
    going.add(new Going<>(workers.submit(work), size));
    bytes += size;
    return wanted;
  }

  private boolean isFull(int more) {
    return going.size() >= MOST_FOR_EACH_CORE * cores
        || (!going.isEmpty() && bytes + more > MOST_BYTES);
  }

  /** Hands on what is left. */
  boolean finish() {
    boolean wanted = true;
    while (wanted && !going.isEmpty()) {
      wanted = handOn();
    }
    return wanted;
  }

  private boolean handOn() {
    Going<T> first = going.remove();
    bytes -= first.bytes;
    return taken.test(result(first.work));
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
