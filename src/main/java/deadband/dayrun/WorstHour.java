package deadband.dayrun;

/** The most events in any 60 minutes; such an hour includes its first minute and not its last. */
final class WorstHour {
  private final long[] latest;
  private int next;
  private int within;
  private int worst;
  private int count;

  WorstHour(StepLength step) {
    latest = new long[step.perHour()];
  }

  /** Notes an event in a step; steps come in rising order. */
  void event(long step) {
    while (within > 0 && latest[oldest()] <= step - latest.length) {
      within--;
    }
    latest[next] = step;
    next = (next + 1) % latest.length;
    within++;
    count++;
    worst = Math.max(worst, within);
  }

  private int oldest() {
    return Math.floorMod(next - within, latest.length);
  }

  int worst() {
    return worst;
  }

  /** All events. */
  int count() {
    return count;
  }
}
