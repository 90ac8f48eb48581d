package deadband.cli;

import deadband.remedy.BestSettings;
import deadband.report.FrontText;
import deadband.setup.Change;
import deadband.setup.Setup;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;

/** Runs a search for the best settings on a terminal: shows how far it is, and ends when asked. */
final class BestSearch {

  private static final int BAR = 30;
  private static final long PATIENCE_MS = 900;

  private final Console console;
  private final AtomicBoolean stop = new AtomicBoolean();
  private int shown = -1;

  BestSearch(Console console) {
    this.console = console;
  }

  /** Searches and prints the front; on an interrupt, the best so far, within a second. */
  Optional<BestSettings.Front> print(BestSettings search, Setup setup, List<Change> proposed) {
    Thread searching = Thread.currentThread();
    Thread interrupted = new Thread(() -> endWith(searching), "interrupt");
    Runtime.getRuntime().addShutdownHook(interrupted);
    Optional<BestSettings.Front> front = search.from(setup, proposed, this::show, stop::get);
    clear();
    console.out().println();
    console
        .out()
        .print(
            front
                .map(found -> FrontText.of(found, console.layout(Console.Colour.NEVER)))
                .orElse(
                    stop.get()
                        ? "best: stopped before a year was simulated\n"
                        : "best: values are missing, no year can be simulated\n"));
    console.flush();
    forget(interrupted);
    return front;
  }

  /** Lets the search end with what it has, and waits for it to print that. */
  private void endWith(Thread searching) {
    stop.set(true);
    try {
      searching.join(PATIENCE_MS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static void forget(Thread hook) {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // The process is ending already, and the hook with it.
    }
  }

  private synchronized void show(int looked, int most, int front) {
    int filled = BAR * looked / Math.max(1, most);
    if (!console.isTerminal() || filled == shown) {
      return;
    }
    shown = filled;
    console
        .err()
        .print(
            "\r"
                + "=".repeat(filled)
                + ".".repeat(BAR - filled)
                + " "
                + looked
                + " of "
                + most
                + ", "
                + front
                + " worth showing ");
    console.err().flush();
  }

  private void clear() {
    if (console.isTerminal()) {
      console.err().print("\r" + " ".repeat(BAR + 40) + "\r");
      console.err().flush();
    }
  }
}
